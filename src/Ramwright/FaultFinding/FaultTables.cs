namespace Ramwright.FaultFinding;

/// <summary>Something that may be wrong with a press.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Says">What it is, in words.</param>
/// <param name="Needs">Parts the press must have for it; all of them.</param>
/// <param name="Prior">How often it is there when a press is in trouble, 0 to 1.</param>
/// <param name="Do">What to do about it.</param>
/// <param name="Opens">Whether doing it opens a line or takes a part out.</param>
/// <param name="Standing">How far the prior can be leaned on.</param>
public sealed record Cause(string Id, string Says, IReadOnlyList<string> Needs, double Prior, string Do, bool Opens, string Standing);

/// <summary>Something that can be seen: a symptom, or the answer to a test.</summary>
/// <param name="Id">Its short name.</param>
/// <param name="Question">Asked so that yes is the sign.</param>
/// <param name="Needs">Parts the press must have for it.</param>
/// <param name="Minutes">How long it takes to find out; 0 for a symptom that is simply there.</param>
/// <param name="Opens">Whether finding out opens a line.</param>
/// <param name="Leak">How often it is seen with nothing wrong, 0 to 1.</param>
public sealed record Sign(string Id, string Question, IReadOnlyList<string> Needs, double Minutes, bool Opens, double Leak)
{
    /// <summary>Whether it is what a person comes with, not a test.</summary>
    public bool IsSymptom => Minutes == 0;
}

/// <summary>How often a cause shows a sign.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Sign">The sign.</param>
/// <param name="Chance">0 to 1: how often the cause alone brings the sign about.</param>
public sealed record Link(string Cause, string Sign, double Chance);

/// <summary>What is known of troubles, whatever the press.</summary>
/// <param name="Causes">Causes.</param>
/// <param name="Signs">Signs.</param>
/// <param name="Links">Links.</param>
public sealed record FaultTables(IReadOnlyList<Cause> Causes, IReadOnlyList<Sign> Signs, IReadOnlyList<Link> Links);
