using Ramwright.Frame;

namespace Ramwright.Ladders;

/// <summary>What the members of a frame weigh.</summary>
internal static class FrameMass
{
    /// <summary>Density of steel, kg/m³; EN 1993-1-1, 3.2.6 gives no value, EN 1991-1-1 table A.4 has 7850.</summary>
    public const double Density = 7850;

    /// <summary>Mass of all beams from end to end as the frame was drawn up, kg.</summary>
    public static double Of(FrameResponse response)
    {
        double volume = 0;
        for (int i = 0; i < response.Plan.Model.Members.Count; i++)
            volume += response.Plan.Model.Members[i].Section.A * (response.Solutions[0].Length(i) + response.Plan.Model.Members[i].InJoints);
        return Density * volume;
    }
}
