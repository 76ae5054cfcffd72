namespace Ramwright.Files.Dossier;

/// <summary>Lays a step of working out: what it is and its result, the formula, what was put in, the source.</summary>
internal sealed class StepSetter
{
    private const double Indent = 22, Size = Typesetter.Small, SourceSize = Size - 0.6, Leading = Typesetter.SmallLeading;

    private readonly StepLine _step;
    private readonly string _result;
    private readonly double _width;
    private readonly IReadOnlyList<string> _meaning, _formula, _with, _source;

    public StepSetter(StepLine step, double width)
    {
        (_step, _width, _result) = (step, width, $"{step.Symbol} = {step.Result}");
        double room = width - Indent;
        _formula = step.Formula.Length > 0 ? Wrapping.Lines($"{step.Symbol} = {step.Formula}", room, Size) : [];
        _with = step.With.Length > 0 ? Wrapping.Lines("with " + step.With, room, Size) : [];
        _source = Wrapping.Lines(step.Source, room, SourceSize);
        _meaning = Wrapping.Lines(step.Meaning, room - Faces.Width(Faces.Fit(_result), Size, true) - 12, Size);
    }

    public double Height => (_meaning.Count + _formula.Count + _with.Count + _source.Count) * Leading + 2;

    /// <summary>Writes it from a height on, and gives where it ends.</summary>
    public double Set(Leaf leaf, double y)
    {
        leaf.Text($"{_step.Number}", Leaf.Left + Indent - 6, y + Size, Size, grey: true, right: true);
        leaf.Formula(_result, Leaf.Left + _width, y + Size, Size, heavy: true, right: true);
        foreach ((IReadOnlyList<string> lines, bool grey, double size) in ((IReadOnlyList<string>, bool, double)[])[(_meaning, false, Size), (_formula, false, Size), (_with, true, Size), (_source, true, SourceSize)])
        {
            foreach (string line in lines)
            {
                leaf.Formula(line, Leaf.Left + Indent, y + Size, size, grey: grey);
                y += Leading;
            }
        }

        return y + 3;
    }
}
