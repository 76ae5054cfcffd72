namespace Ramwright.Workings;

/// <summary>Where a formula or a value comes from.</summary>
/// <param name="Work">The standard or book, with its year or edition.</param>
/// <param name="Clause">The clause, table or equation in it.</param>
/// <param name="Standing">How far it can be leaned on.</param>
public sealed record Citation(string Work, string Clause = "", Standing Standing = Standing.Published)
{
    /// <summary>Common practice of the trade, with no published source.</summary>
    public static Citation Practice(string what) => new(what, "", Standing.Practice);

    /// <summary>A law of mechanics that needs no book: statics, geometry, conservation.</summary>
    public static Citation Mechanics(string what) => new(what, "", Standing.Mechanics);

    /// <summary>As a reader sees it: <c>EN 1993-1-8:2005, 4.5.3.2</c>, <c>common practice: ...</c>.</summary>
    public override string ToString()
    {
        string where = Clause.Length == 0 ? Work : $"{Work}, {Clause}";
        return Standing switch
        {
            Standing.Practice => $"common practice: {where}",
            Standing.FromMemory => $"{where} (from memory)",
            _ => where,
        };
    }
}
