namespace Ramwright.Files.Dossier;

/// <summary>Lays a name with its value and remark out on one line, or on as many as they take.</summary>
internal sealed class FactSetter
{
    private const double NameWide = 118, ValueWide = 132, Size = Typesetter.Body, Small = Typesetter.Small;

    private readonly IReadOnlyList<string> _names, _values, _remarks;

    public FactSetter((string Name, string Value, string Remark) fact, double width)
    {
        _names = Wrapping.Lines(fact.Name, NameWide - 6, Size);
        _values = Wrapping.Lines(fact.Value, fact.Remark.Length > 0 ? ValueWide - 6 : width - NameWide, Size, true);
        _remarks = fact.Remark.Length > 0 ? Wrapping.Lines(fact.Remark, width - NameWide - ValueWide, Small) : [];
    }

    public double Height => Math.Max(Math.Max(_names.Count, _values.Count) * Typesetter.Leading, _remarks.Count * Typesetter.SmallLeading + 2);

    /// <summary>Writes it from a height on, and gives where it ends.</summary>
    public double Set(Leaf leaf, double y)
    {
        for (int i = 0; i < _names.Count; i++)
            leaf.Text(_names[i], Leaf.Left, y + i * Typesetter.Leading + Size, Size, grey: true);
        for (int i = 0; i < _values.Count; i++)
            leaf.Text(_values[i], Leaf.Left + NameWide, y + i * Typesetter.Leading + Size, Size, heavy: true);
        for (int i = 0; i < _remarks.Count; i++)
            leaf.Text(_remarks[i], Leaf.Left + NameWide + ValueWide, y + i * Typesetter.SmallLeading + Size, Small, grey: true);
        return y + Height + 1.5;
    }
}
