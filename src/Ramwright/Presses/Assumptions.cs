using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Fills in what was not said, and keeps the list of it.</summary>
internal sealed class Assumptions
{
    private const int MostNamed = 4;

    private readonly List<Assumed> _made = [];
    private readonly List<Caution> _cautions = [];
    private readonly List<Fault> _faults = [];
    private readonly List<(Remark Says, List<string> Parts)> _steels = [];

    public IReadOnlyList<Assumed> Made => _made;

    public IReadOnlyList<Caution> Cautions => [.. _cautions, .. _steels.Select(s => new Caution(CautionKind.Unchecked, s.Says with { Words = $"{s.Says.Words} So it is for: {Named(s.Parts)}." }))];

    public IReadOnlyList<Fault> Faults => _faults;

    /// <summary>What was said, or else a value, noted.</summary>
    public double Or(double? said, string what, double value, Dimension dimension, Remark why)
    {
        if (said is { } there)
            return there;
        _made.Add(new AssumedMeasure(what, value, dimension, why));
        return value;
    }

    /// <summary>What was said, or else a name, noted.</summary>
    public string Or(string? said, string what, string word, Remark why)
    {
        if (said is not null)
            return said;
        Note(what, word, why);
        return word;
    }

    /// <summary>What was said, or else a word, noted.</summary>
    public T Or<T>(T? said, string what, T word, Remark why)
        where T : struct, Enum
    {
        if (said is { } there)
            return there;
        _made.Add(new AssumedWord(what, KeyNames.Written(word.ToString()), why));
        return word;
    }

    /// <summary>Notes something that was assumed by other means; the same key with the same word once, however many parts it stands for.</summary>
    public void Note(string what, Remark word, Remark why)
    {
        if (!_made.Exists(a => a is AssumedWord same && same.What == what && same.Word.Words == word.Words))
            _made.Add(new AssumedWord(what, word, why));
    }

    /// <summary>Notes something that cannot be built; resolving goes on, so that all such faults are found at once.</summary>
    public void Fault(string path, Remark found, Remark wanted) => _faults.Add(new Fault(path, found, wanted));

    /// <summary>Adds a caution once.</summary>
    public void Caution(Remark says, CautionKind kind = CautionKind.Unchecked)
    {
        if (says.Words.Length > 0 && !_cautions.Exists(c => c.Says.Words == says.Words && c.Says.Numbers.SequenceEqual(says.Numbers)))
            _cautions.Add(new Caution(kind, says));
    }

    /// <summary>Adds the caution of a steel once, with the parts it is said of.</summary>
    /// <param name="says">The caution.</param>
    /// <param name="path">Where the steel is named: <c>frame.column.steel</c>.</param>
    public void CautionOfSteel(Remark says, string path)
    {
        if (says.Words.Length == 0)
            return;
        string part = path.EndsWith(".steel", StringComparison.Ordinal) ? path[..^".steel".Length] : path;
        int at = _steels.FindIndex(s => s.Says.Words == says.Words);
        if (at < 0)
            _steels.Add((says, [part]));
        else if (!_steels[at].Parts.Contains(part))
            _steels[at].Parts.Add(part);
    }

    private static string Named(List<string> parts) => parts.Count <= MostNamed + 1 ? string.Join(", ", parts) : $"{string.Join(", ", parts.Take(MostNamed))} and {parts.Count - MostNamed} more";
}
