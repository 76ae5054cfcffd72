using Ramwright.Files;
using Ramwright.Files.Binding;

namespace Ramwright.Web.Forms;

/// <summary>Something on the form: one value, a record of values, or a list.</summary>
/// <param name="Path">Its path in the file.</param>
/// <param name="Label">Its key as words.</param>
/// <param name="Says">What it means.</param>
/// <param name="Faults">What is wrong just here.</param>
internal abstract record FormItem(string Path, string Label, string Says, IReadOnlyList<PlacedFault> Faults)
{
    /// <summary>Name of its place on the page.</summary>
    public string Id => "at-" + Path;
}

/// <summary>One value.</summary>
/// <param name="Shape">Its key.</param>
/// <param name="Written">What the file says, as written; empty where it says nothing.</param>
/// <param name="Assumed">What stands in for it where the file says nothing; empty where nothing does.</param>
/// <param name="Why">Why that was assumed.</param>
internal sealed record FormValue(
    string Path, string Label, string Says, IReadOnlyList<PlacedFault> Faults, KeyShape Shape, string Written, string Assumed, string Why)
    : FormItem(Path, Label, Says, Faults)
{
    /// <summary>How a person would write it, in the reader's units.</summary>
    public string Example { get; init; } = Shape.Example;

    /// <summary>Whether nothing can stand in for it.</summary>
    public bool IsMissing => Shape.IsNeeded && Written.Length == 0;
}

/// <summary>A record of further values.</summary>
/// <param name="Kinds">The kinds it comes in, word and meaning; empty for one of a single kind.</param>
/// <param name="Kind">The word written or assumed; empty where there is none.</param>
/// <param name="KindSaid">Whether the file says the kind.</param>
/// <param name="IsWritten">Whether the file says anything of it.</param>
/// <param name="Items">What is in it.</param>
internal sealed record FormBox(
    string Path, string Label, string Says, IReadOnlyList<PlacedFault> Faults, IReadOnlyList<(string Word, string Says)> Kinds,
    string Kind, bool KindSaid, bool IsWritten, IReadOnlyList<FormItem> Items) : FormItem(Path, Label, Says, Faults)
{
    /// <summary>Whether something is wrong in it, however deep.</summary>
    public bool HasFaults => Faults.Count > 0 || Items.Any(Wrong);

    internal static bool Wrong(FormItem item) => item.Faults.Count > 0 || item switch
    {
        FormBox box => box.HasFaults,
        FormList list => list.Items.Any(Wrong),
        _ => false,
    };
}

/// <summary>A list.</summary>
/// <param name="Items">What is in it.</param>
/// <param name="NextPath">The path that begins a new one.</param>
/// <param name="NextValue">What to write there.</param>
/// <param name="One">What one of them is called.</param>
internal sealed record FormList(
    string Path, string Label, string Says, IReadOnlyList<PlacedFault> Faults, IReadOnlyList<FormItem> Items, string NextPath, string NextValue, string One)
    : FormItem(Path, Label, Says, Faults);

/// <summary>One part of the form.</summary>
/// <param name="Title">What the trade calls it.</param>
/// <param name="Items">What is in it.</param>
internal sealed record FormGroup(string Title, IReadOnlyList<FormItem> Items);
