using System.Text;
using System.Text.Json;
using Ramwright.Ladders;
using Ramwright.Presses;

namespace Ramwright.Files;

/// <summary>The allowed force against the offset as JSON with stable names, ready for a chart.</summary>
public static class OffCentreJson
{
    /// <summary>Writes the curve as an object of its own.</summary>
    public static string Text(PressCheck press, OffCentre curve)
    {
        ArgumentNullException.ThrowIfNull(press);
        ArgumentNullException.ThrowIfNull(curve);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, CheckJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("press", press.Rig.Name);
            json.WriteNumber("wantedKN", CheckJson.Round(press.Rig.Wanted / 1e3));
            json.WriteStartObject("wantedUpToMm");
            foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
            {
                if (curve.Reach(way, press.Rig.Wanted) is { } reach)
                    json.WriteNumber(KeyNames.Written(way.ToString()), CheckJson.Round(reach * 1e3));
                else
                    json.WriteNull(KeyNames.Written(way.ToString()));
            }

            json.WriteEndObject();
            Write(json, curve);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Writes the points as a list named <c>offCentre</c>.</summary>
    internal static void Write(Utf8JsonWriter json, OffCentre curve)
    {
        json.WriteStartArray("offCentre");
        foreach (OffCentrePoint point in curve.Points)
        {
            json.WriteStartObject();
            json.WriteString("direction", KeyNames.Written(point.Way.ToString()));
            json.WriteNumber("offsetMm", CheckJson.Round(point.Offset * 1e3));
            json.WriteNumber("safeToKN", CheckJson.Round(point.SafeTo / 1e3));
            json.WriteString("governing", point.Governing.Id);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
