namespace Ramwright.Proving;

/// <summary>An O-ring of the inch series of ISO 3601-1.</summary>
/// <param name="Code">Its size code: 210.</param>
/// <param name="Inside">Inside diameter d_1, m.</param>
/// <param name="Section">Thickness d_2, m.</param>
public readonly record struct ORingSize(int Code, double Inside, double Section)
{
    private const double Inch = 0.0254;

    /// <summary>The sizes from memory: by the regular steps of the series, inside diameters in inches.</summary>
    public static IReadOnlyList<ORingSize> All { get; } = [.. Series()];

    private static IEnumerable<ORingSize> Series() =>
    [
        .. Regular(10, 0.070, 0.239, 1 / 16.0, 19), .. Regular(29, 0.070, 1.489, 0.125, 13), .. Regular(42, 0.070, 3.239, 0.25, 9),
        .. Regular(110, 0.103, 0.362, 1 / 16.0, 40), .. Regular(150, 0.103, 2.862, 0.125, 2), .. Regular(152, 0.103, 3.237, 0.25, 27),
        .. Regular(210, 0.139, 0.734, 1 / 16.0, 13), .. Regular(223, 0.139, 1.609, 0.125, 36), .. Regular(259, 0.139, 6.234, 0.25, 16), .. Regular(275, 0.139, 10.484, 0.5, 4),
        .. Regular(325, 0.210, 1.475, 0.125, 39), .. Regular(364, 0.210, 6.475, 0.25, 15), .. Regular(379, 0.210, 10.475, 0.5, 4),
        .. Regular(425, 0.275, 4.475, 0.125, 13), .. Regular(438, 0.275, 6.225, 0.25, 8), .. Regular(446, 0.275, 8.475, 0.5, 15),
    ];

    private static IEnumerable<ORingSize> Regular(int code, double section, double first, double step, int count) =>
        Enumerable.Range(0, count).Select(i => new ORingSize(code + i, (first + i * step) * Inch, section * Inch));
}
