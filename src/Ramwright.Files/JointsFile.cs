using System.Text.Json;
using Ramwright.Presses;
using Ramwright.Solids;

namespace Ramwright.Files;

/// <summary>
/// Springs of joints from solids, kept beside a press file as <c>NAME.joints.json</c>. Each is kept under what describes its joint, so that a change to the joint or its members leaves
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

    /// <summary>Reads them; null where there is no such file, or it holds nothing that can be read.</summary>
    public static JointBook? Read(string path)
    {
        try
        {
            if (!File.Exists(path))
                return null;
            using JsonDocument json = JsonDocument.Parse(File.ReadAllText(path));
            var book = new JointBook();
            foreach (JsonElement joint in json.RootElement.GetProperty("joints").EnumerateArray())
            {
                double Of(string name) => joint.TryGetProperty(name, out JsonElement value) && value.TryGetDouble(out double x) && x > 0 ? x : double.PositiveInfinity;
                book.Add(joint.GetProperty("joint").GetString() ?? "", new RigSpring(Of("beamTurningNmPerRad"), Of("uprightTurningNmPerRad"), Of("alongUprightNPerM")));
            }

            return book;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Writes them.</summary>
    /// <returns>What went wrong, in words; null if nothing did.</returns>
    public static string? Write(string path, JointBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        string text = JsonText.Object(json => json.List("joints", book.Joints.OrderBy(j => j.Key, StringComparer.Ordinal), (joint, j) =>
        {
            joint.WriteString("joint", j.Key);
            void Stiffness(string name, double value)
            {
                if (double.IsFinite(value))
                    joint.WriteNumber(name, JsonText.Round(value));
            }

            Stiffness("beamTurningNmPerRad", j.Value.Beam);
            Stiffness("uprightTurningNmPerRad", j.Value.Upright);
            Stiffness("alongUprightNPerM", j.Value.Along);
        }));
        try
        {
            File.WriteAllText(path, text);
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return $"{path} could not be written: {fault.Message}";
        }
    }
}
