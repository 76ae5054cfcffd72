using System.Globalization;
using Ramwright.Files.Binding;
using Ramwright.Presses;
using Ramwright.Quantities;

namespace Ramwright.Web.Forms;

/// <summary>What must be written for a new item of a list to be whole: every key that nothing can stand in for, with its example.</summary>
internal static class NewRecord
{
    /// <summary>The kinds of job that there are, word and meaning.</summary>
    public static IReadOnlyList<(string Word, string Says)> JobKinds { get; } = [.. JobShape.Kinds.Select(k => (k.Kind!, k.Says))];

    // of several keys one must be said; this is the one that is usual
    private static readonly Dictionary<string, (string Key, string Value)[]> Usual = new(StringComparer.Ordinal)
    {
        ["straighten"] = [("bow", "1 mm")],
        ["crush-concrete"] = [("class", "C25/30"), ("cube", "150 mm")],
        ["press-fit"] = [("joint.fit", "H7/p6")],
        ["pull"] = [("force", "50 kN")],
        ["punch"] = [("hole", "14 mm")],
    };

    private static RecordShape JobShape => RecordShape.Of(RecordShape.Of(typeof(Press)).Find("jobs")!.Element);

    /// <summary>Paths and values of a new job.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="index">Its place in the list, from 0.</param>
    /// <param name="tape">Units that the file is written in.</param>
    /// <exception cref="ArgumentException">There is no such kind.</exception>
    public static IReadOnlyList<(string Path, string Value)> Job(string kind, int index, UnitSystem tape = UnitSystem.Metric)
    {
        string path = string.Create(CultureInfo.InvariantCulture, $"jobs.{index}");
        RecordShape shape = JobShape.Kinds.FirstOrDefault(k => k.Kind == kind) ?? throw new ArgumentException($"no kind of job is called {kind}", nameof(kind));
        return [($"{path}.kind", kind), .. Needed(shape, path, tape), .. Usual.GetValueOrDefault(kind, []).Select(u => ($"{path}.{u.Key}", u.Value))];
    }

    private static IEnumerable<(string Path, string Value)> Needed(RecordShape shape, string path, UnitSystem tape)
    {
        foreach (KeyShape key in shape.Keys.Where(k => k.IsNeeded))
        {
            string at = $"{path}.{key.Key}";
            if (key.Form == KeyForm.Record)
            {
                RecordShape inside = RecordShape.Of(key.Element);
                if (inside.Kinds.Count > 0)
                {
                    inside = inside.Kinds[0];
                    yield return ($"{at}.kind", inside.Kind!);
                }

                foreach ((string, string) one in Needed(inside, at, tape))
                    yield return one;
            }
            else if (key.Form is not KeyForm.Records)
            {
                yield return (at, key.ExampleIn(tape));
            }
        }
    }
}
