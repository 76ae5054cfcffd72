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
        return JsonText.Object(json =>
        {
            json.WriteString("press", press.Rig.Name);
            json.WriteNumber("wantedKN", JsonText.Round(press.Rig.Wanted / 1e3));
            json.Object("wantedUpToMm", upTo =>
            {
                foreach (OffCentreWay way in Enum.GetValues<OffCentreWay>())
                {
                    if (curve.Reach(way, press.Rig.Wanted) is { } reach)
                        upTo.WriteNumber(KeyNames.Written(way.ToString()), JsonText.Round(reach * 1e3));
                    else
                        upTo.WriteNull(KeyNames.Written(way.ToString()));
                }
            });
            Write(json, curve);
        });
    }

    /// <summary>Writes the points as a list named <c>offCentre</c>.</summary>
    internal static void Write(Utf8JsonWriter json, OffCentre curve) =>
        json.List("offCentre", curve.Points, (at, point) =>
        {
            at.WriteString("direction", KeyNames.Written(point.Way.ToString()));
            at.WriteNumber("offsetMm", JsonText.Round(point.Offset * 1e3));
            at.WriteNumber("safeToKN", JsonText.Round(point.SafeTo / 1e3));
            at.WriteString("governing", point.Governing.Id);
        });
}
