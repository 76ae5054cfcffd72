using System.Text.Json;
using Ramwright.Geometry;
using Ramwright.Presses;
using Ramwright.Solids;
using Ramwright.Strength;

namespace Ramwright.Files;

/// <summary>A solid check as JSON with stable names; all for the wanted force, lengths in mm, stresses in MPa.</summary>
public static class SolidJson
{
    /// <summary>Writes it.</summary>
    /// <param name="solid">The check.</param>
    /// <param name="rig">The press.</param>
    /// <param name="line">A line along which stress is wanted, m; null for none.</param>
    public static string Text(SolidCheck solid, Rig rig, (Vector From, Vector To)? line = null)
    {
        ArgumentNullException.ThrowIfNull(solid);
        ArgumentNullException.ThrowIfNull(rig);
        double force = rig.Wanted;
        return JsonText.Object(json =>
        {
            json.WriteString("press", rig.Name);
            json.WriteNumber("wantedKN", JsonText.Round(force / 1e3));
            if (HotSpotFatigue.Least(solid, force, new FatigueFactors(rig.Factors.Fatigue, rig.Factors.FatigueLoad)) is var (_, squeezes))
                json.WriteNumber("squeezesAtHotSpot", JsonText.Round(squeezes));
            json.List("cases", solid.Cases, (inner, answer) =>
            {
                Case(inner, solid, answer, force);
                if (line is var (from, to))
                    inner.List("line", StressLine.Of(answer.Solution, from, to), (point, p) => Point(point, p, force));
            });
            json.List("notes", solid.Solid.Notes.Select(n => n.Text()).Concat(HotSpot.Unread(solid)));
        });
    }

    private static void Point(Utf8JsonWriter json, StressPoint point, double force)
    {
        json.WriteNumber("alongMm", Milli(point.Along));
        json.WriteString("part", point.Part);
        json.WriteNumber("equivalentMPa", Mega(point.Equivalent * force));
        json.WriteNumber("alongLineMPa", Mega(point.Pull * force));
    }

    private static void Case(Utf8JsonWriter json, SolidCheck solid, SolidCaseAnswer answer, double force)
    {
        json.WriteString("case", answer.Case.Name);
        json.WriteNumber("openingMm", Milli(answer.Opening * force));
        if (answer.GridError is { } error)
            json.WriteNumber("gridErrorShare", JsonText.Round(error));
        json.WriteNumber("dieTurnMmPerM", Milli(answer.Turn * force));
        for (int i = 0; i < solid.Beams.Solutions.Count; i++)
            if (solid.Beams.Solutions[i].Case.Name == answer.Case.Name)
            {
                json.WriteNumber("openingByBeamsMm", Milli(solid.Beams.Growth(i) * force));
                json.WriteNumber("dieTurnByBeamsMmPerM", Milli(solid.Beams.Opening(i) * force));
                if (solid.BeamsOnSprings is { } onSprings)
                    json.WriteNumber("openingByBeamsOnSolidJointsMm", Milli(onSprings.Growth(i) * force));
            }

        json.List("grids", ((GridAnswer?[])[answer.Coarse, answer.Fine]).OfType<GridAnswer>(), (grid, g) =>
        {
            grid.WriteNumber("unknowns", g.Unknowns);
            grid.WriteNumber("openingMm", Milli(g.Opening * force));
            grid.WriteNumber("dieTurnMmPerM", Milli(g.Turn * force));
        });
        json.Object("solver", inner =>
        {
            inner.WriteNumber("iterations", answer.Solution.Convergence.Iterations);
            inner.WriteNumber("energyError", JsonText.Round(answer.Solution.Convergence.Error));
            inner.WriteNumber("outOfBalance", JsonText.Round(answer.Solution.OutOfBalance));
            inner.WriteNumber("throughLevelCutShare", JsonText.Round(answer.Through));
        });
        if (answer.Weakest is { } weakest)
            json.Object("weakest", inner =>
            {
                inner.WriteString("part", weakest.Part);
                inner.List("at", [weakest.At], Place);
                inner.WriteNumber("carriedMPa", Mega(weakest.Carried * force));
                inner.WriteNumber("peakMPa", Mega(weakest.Peak * force));
                inner.WriteBoolean("sharpCorner", weakest.IsSharp);
                inner.WriteNumber("yieldMPa", Mega(weakest.Yield));
                inner.WriteNumber("givesAtKN", JsonText.Round(weakest.GivesAt / 1e3));
                if (answer.CoarseWeakest is { } coarser)
                    inner.WriteNumber("givesAtByCoarserGridKN", JsonText.Round(coarser.GivesAt / 1e3));
            });
        json.List("hotSpots", answer.HotSpots, (spot, h) =>
        {
            spot.WriteString("where", h.Toe.Name);
            spot.WriteNumber("stressMPa", Mega(h.Stress * force));
            spot.WriteString("read", h.Toe.Reading.Text);
            spot.WriteBoolean("onEdge", h.Toe.OnEdge);
            spot.List("places", Enumerable.Range(0, h.Read.Count), (place, i) =>
            {
                place.WriteNumber("beforeToeMm", Milli(h.Toe.Reading.Before(i, h.Toe.Thickness)));
                place.WriteNumber("stressMPa", Mega(h.Read[i] * force));
            });
        });
    }

    private static void Place(Utf8JsonWriter json, Vector at)
    {
        json.WriteNumber("acrossMm", Milli(at.X));
        json.WriteNumber("deepMm", Milli(at.Y));
        json.WriteNumber("upMm", Milli(at.Z));
    }

    private static double Milli(double x) => JsonText.Round(x * 1e3);

    private static double Mega(double x) => JsonText.Round(x / 1e6);
}
