namespace Ramwright.Presses;

/// <summary>What stands on the drawings and on the rating plate.</summary>
[Says("what stands on the drawings and on the rating plate")]
public sealed record PaperWork
{
    /// <summary>Class of general tolerances.</summary>
    [Says("class of general tolerances, ISO 2768-1, for sizes without one of their own")]
    public ToleranceClass? Tolerances { get; init; }

    /// <summary>Who built it.</summary>
    [Says("who built it, for the rating plate")]
    public string? Builder { get; init; }

    /// <summary>Its number.</summary>
    [Says("its number, for the rating plate")]
    public string? Number { get; init; }

    /// <summary>The year it was built.</summary>
    [Says("the year it is built, for the rating plate")]
    public string? Year { get; init; }

    /// <summary>Surface treatment.</summary>
    [Says("paint or other protection of the steel")]
    public string? Finish { get; init; }
}

/// <summary>Classes of general tolerances; ISO 2768-1.</summary>
public enum ToleranceClass
{
    /// <summary>f.</summary>
    [Says("f, fine")]
    Fine,
    /// <summary>m.</summary>
    [Says("m, medium: usual for machined parts")]
    Medium,
    /// <summary>c.</summary>
    [Says("c, coarse: usual for sawn and welded parts")]
    Coarse,
    /// <summary>v.</summary>
    [Says("v, very coarse")]
    VeryCoarse,
}
