using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>One thing a job needs of the press, and what the press has of it.</summary>
/// <param name="Id">Short stable name: <c>pump</c>, <c>rating</c>, <c>daylight</c>, <c>stroke</c>, <c>heat</c>, <c>shock</c>.</param>
/// <param name="Verdict">Whether there is enough.</param>
/// <param name="Why">The reason as a clause, to follow a colon.</param>
public sealed record JobLimit(string Id, Verdict Verdict, Remark Why);
