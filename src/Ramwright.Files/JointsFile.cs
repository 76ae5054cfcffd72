using System.Text;
using System.Text.Json;
using Ramwright.Presses;
using Ramwright.Solids;

namespace Ramwright.Files;

/// <summary>
/// Springs of joints from solids and stress factors at the toes of their welds, kept beside a press file as <c>NAME.joints.json</c>. Each is kept under what describes its joint, so that a change to the joint or its members leaves
/// it behind, and the rules are taken again until the solids are solved anew.
/// </summary>
public static class JointsFile
{
    private const string Ending = ".press.yaml";

    /// <summary>Where they are kept for a press file.</summary>
    public static string PathOf(string pressFile)
    {
        ArgumentNullException.ThrowIfNull(pressFile);
        return (pressFile.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? pressFile[..^Ending.Length] : pressFile) + ".joints.json";
    }

    /// <summary>Reads them; null where there is no such file, or it cannot be read.</summary>
    /// <param name="path">The file.</param>
    /// <param name="unread">Why a file that is there is not used, in words; empty otherwise.</param>
    public static JointBook? Read(string path, out string unread)
    {
        unread = "";
        try
        {
            if (!File.Exists(path))
                return null;
            using JsonDocument json = JsonDocument.Parse(File.ReadAllText(path));
            var book = new JointBook();
            if (json.RootElement.GetProperty("method").GetInt32() != LocalToes.Method)
            {
                unread = $"{Path.GetFileName(path)} was found by an earlier way of solving joints and is not used: joints spring by rule, and hot spots are not known. {Anew}";
                return null;
            }

            foreach (JsonElement joint in json.RootElement.GetProperty("joints").EnumerateArray())
            {
                // what gives nothing is left out
                double Of(string name) => !joint.TryGetProperty(name, out JsonElement value) ? double.PositiveInfinity
                    : value.GetDouble() is var k and > Softest and < Stiffest ? k : throw new InvalidOperationException();
                string of = joint.GetProperty("joint").GetString() ?? "";
                book.Add(of, new RigSpring(Of("beamTurningNmPerRad"), Of("uprightTurningNmPerRad"), Of("alongUprightNPerM")) { Toes = Toes(joint.GetProperty("toes")) });
            }

            return book;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            unread = $"{Path.GetFileName(path)} cannot be read and is not used: joints spring by rule, and hot spots are not known. {Anew}";
            return null;
        }
    }

    private static IReadOnlyList<RigToe> Toes(JsonElement toes)
    {
        return
        [
            .. toes.EnumerateArray().Select(t => new RigToe(t.GetProperty("on").GetString() == "beam", t.GetProperty("side").GetString() == "inner", Above(t.GetProperty("thicknessMm").GetDouble() / 1e3),
                [.. t.GetProperty("places").EnumerateArray().Select(p => new ToeLine(Number(p, "paPerNm"), Number(p, "paPerNAcross"), Number(p, "paPerNAlong")))]) { OnEdge = t.GetProperty("onEdge").GetBoolean() }).Where(t => t.Lines.Count > 0),
        ];
        static double Above(double x) => x > 0 && x < 1 ? x : throw new InvalidOperationException();
        static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble() is var x && Math.Abs(x) < Farthest ? x : throw new InvalidOperationException();
    }

    private const string Anew = "Find them anew: ramwright solid FILE --keep-joints.";

    /// <summary>Springs of steel joints lie far between these, N·m/rad or N/m.</summary>
    private const double Softest = 1, Stiffest = 1e15;

    /// <summary>What to say of a press whose joints are not among those that are kept beside it.</summary>
    /// <param name="path">The file.</param>
    /// <param name="missing">Why the joints that it has now are not found from solids; null where they are.</param>
    public static string OfOthers(string path, string? missing) =>
        $"{Path.GetFileName(path)} is of other joints than the press has now and is not used: joints spring by rule, and hot spots at their welds, which may have been the weakest, are not counted. "
        + (missing is null ? Anew : $"They cannot be found anew: {missing}.");

    /// <summary>No stress factor of a joint of steel comes near it.</summary>
    private const double Farthest = 1e12;

    /// <summary>The file's text.</summary>
    public static string Text(JointBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return JsonText.Object(json =>
        {
            json.WriteNumber("method", LocalToes.Method);
            json.List("joints", book.Joints.OrderBy(j => j.Key, StringComparer.Ordinal), (joint, j) => Put(joint, j.Key, j.Value));
        });
    }

    private static void Put(Utf8JsonWriter joint, string of, RigSpring spring)
    {
        joint.WriteString("joint", of);
        void Stiffness(string name, double value)
        {
            if (double.IsFinite(value))
                joint.WriteNumber(name, JsonText.Round(value));
        }

        Stiffness("beamTurningNmPerRad", spring.Beam);
        Stiffness("uprightTurningNmPerRad", spring.Upright);
        Stiffness("alongUprightNPerM", spring.Along);
        joint.List("toes", spring.Toes, (toe, t) =>
        {
            toe.WriteString("on", t.OnBeam ? "beam" : "upright");
            toe.WriteString("side", t.Inner ? "inner" : "outer");
            toe.WriteBoolean("onEdge", t.OnEdge);
            toe.WriteNumber("thicknessMm", JsonText.Round(t.Thickness * 1e3));
            toe.List("places", t.Lines, (place, l) =>
            {
                place.WriteNumber("paPerNm", JsonText.Round(l.M));
                place.WriteNumber("paPerNAcross", JsonText.Round(l.V));
                place.WriteNumber("paPerNAlong", JsonText.Round(l.N));
            });
        });
    }

    /// <summary>Writes them.</summary>
    /// <returns>What went wrong, in words; null if nothing did.</returns>
    public static string? Write(string path, JointBook book)
    {
        string text = Text(book);
        try
        {
            WholeWrite.Replace(path, Encoding.UTF8.GetBytes(text));
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return $"{Path.GetFileName(path)} could not be written: {fault.Message}";
        }
    }
}
