using System.Text;
using Ramwright.Files.Editing;
using Ramwright.Quantities;

namespace Ramwright.Files.Starting;

/// <summary>
/// What a person answers first about a press, each as typed; empty where it is not answered yet. Together with what is taken for now they
/// make a whole press file.
/// </summary>
public sealed record FirstAnswers
{
    /// <summary>Cylinder: <c>double-acting</c> or <c>single-acting</c>.</summary>
    public string Cylinder { get; init; } = "";

    /// <summary>Its bore.</summary>
    public string Bore { get; init; } = "";

    /// <summary>The pressure on its plate.</summary>
    public string RatedPressure { get; init; } = "";

    /// <summary>What drives it: <c>electric</c>, <c>air</c> or <c>hand</c>.</summary>
    public string Pump { get; init; } = "";

    /// <summary>Motor power, ratio of the air pump, or oil per stroke of the handle.</summary>
    public string PumpSize { get; init; } = "";

    /// <summary>Frame: <c>closed</c> or <c>open-front</c>.</summary>
    public string Frame { get; init; } = "";

    /// <summary>Largest opening.</summary>
    public string Daylight { get; init; } = "";

    /// <summary>Clear width between the uprights, or the throat.</summary>
    public string Width { get; init; } = "";

    /// <summary>Section of all members.</summary>
    public string Section { get; init; } = "";

    /// <summary>Their steel.</summary>
    public string Steel { get; init; } = "";

    /// <summary>The force.</summary>
    public string Wanted { get; init; } = "";

    /// <summary>Whether nothing is answered yet.</summary>
    public bool IsEmpty => this == new FirstAnswers();

    /// <summary>Path of the key that <see cref="PumpSize"/> fills.</summary>
    public string PumpSizeKey => "pump." + PumpSizeOf(Said("pump.kind")).Key;

    /// <summary>Path of the key that <see cref="Width"/> fills.</summary>
    public string WidthKey => "frame." + WidthOf(Said("frame.kind")).Key;

    /// <summary>What stands in for everything that is not answered yet, in the order of the file.</summary>
    public IReadOnlyList<TakenForNow> Taken => [.. Lines().Where(l => l.Answer.Trim().Length == 0 && l.Why.Length > 0).Select(l => new TakenForNow(l.Path, l.Usual, l.Why))];

    /// <summary>The press file.</summary>
    /// <param name="name">What the press is called.</param>
    public string Text(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var text = new StringBuilder();
        text.Append("# Begun from a few questions. What is marked \"taken for now\" was not answered: put what you have in its place.\n");
        text.Append("# Any unit of the trade will do, and every key that is left out is assumed openly: ramwright check lists them.\n");
        text.Append($"name: {Quoting.Written(name.Trim().Length == 0 ? "My press" : name.Trim(), false)}\n");
        string above = "";
        foreach ((string path, string answer, string usual, string why) in Lines())
        {
            string value = answer.Trim().Length > 0 ? Quoting.Written(answer.Trim(), false) : usual;
            if (value.Length == 0)
                continue;
            int dot = path.IndexOf('.');
            string record = dot < 0 ? "" : path[..dot];
            if (record != above)
                text.Append($"\n{record}:\n");
            above = record;
            string line = $"{(dot < 0 ? "" : "  ")}{path[(dot + 1)..]}: {value}";
            text.Append(answer.Trim().Length > 0 || why.Length == 0 ? line : $"{line,-32}# taken for now: {why}").Append('\n');
        }

        return text.ToString();
    }

    private string Said(string path)
    {
        (_, string answer, string usual, _) = Lines().First(l => l.Path == path);
        return answer.Trim().Length > 0 ? answer.Trim() : usual;
    }

    // who measures in inches is not answered in millimetres
    private string Tape(string metric, string imperial) =>
        new[] { Bore, Daylight, Width }.Any(l => QuantityText.TryRead(l, Dimension.Length, out Quantity read, out _) && read.Unit.Symbol is "in" or "ft" or "thou") ? imperial : metric;

    private IEnumerable<(string Path, string Answer, string Usual, string Why)> Lines()
    {
        yield return ("wanted", Wanted, Tape("20 t", "20 US ton"), "a common size of workshop press");
        yield return ("cylinder.kind", Cylinder, "double-acting", "oil brings the ram back");
        yield return ("cylinder.bore", Bore, Tape("100 mm", "4 in"), "a common bore; measure the barrel or read the plate");
        yield return ("cylinder.rated-pressure", RatedPressure, "", "");
        string pump = Pump.Trim().Length > 0 ? Pump.Trim() : "electric";
        yield return ("pump.kind", Pump, "electric", "the usual power pack");
        (string size, string usual, string why) = PumpSizeOf(pump);
        yield return ("pump." + size, PumpSize, usual, why);
        if (pump == "air")
            yield return ("pump.air-pressure", "", "6.3 bar", "what reaches the pump from the usual compressor while it runs");
        string frame = Frame.Trim().Length > 0 ? Frame.Trim() : "closed";
        yield return ("frame.kind", Frame, "closed", "crown and bed between two uprights");
        yield return ("frame.daylight", Daylight, frame == "closed" ? Tape("600 mm", "24 in") : Tape("300 mm", "12 in"), "ram up, no tooling");
        (string width, string clear, string of) = WidthOf(frame);
        yield return ("frame." + width, Width, clear, of);
        yield return ("frame.section", Section, frame == "closed" ? "2 x UPN 200" : "HEB 200", "every member of the frame");
        yield return ("frame.steel", Steel, "unknown", "reckoned as the weakest structural steel");
    }

    private static (string Key, string Usual, string Why) PumpSizeOf(string pump) => pump switch
    {
        "air" => ("ratio", "100", "air piston over oil plunger; about 700 bar on 7 bar of air"),
        "hand" => ("per-stroke", "2.5 mL", "a common hand pump; read the maker's sheet"),
        _ => ("motor", "3 hp", "a common motor"),
    };

    private (string Key, string Usual, string Why) WidthOf(string frame) => frame == "open-front"
        ? ("throat", Tape("180 mm", "7 in"), "from the ram's centre line to the column")
        : ("width", Tape("600 mm", "24 in"), "clear between the uprights");
}

/// <summary>What stands in for an answer that is not given yet.</summary>
/// <param name="Path">Path of the key.</param>
/// <param name="Value">The value.</param>
/// <param name="Why">Why this.</param>
public sealed record TakenForNow(string Path, string Value, string Why);
