using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>
/// What is let go when the work or a tool gives way all at once under a ram force: a punch that breaks through, a bar that snaps.
/// </summary>
/// <remarks>
/// Frame and oil are two springs in a row under one force, wound up together and let go together. All of these are bounds from energy: nothing is lost
/// to friction or to oil that has to be squeezed through valves, the ram is fully out and so has the most oil above it. Hoses swell and oil carries air, which stores more
/// still, some tenths as much again on a long hose. The true speeds and reversals are lower, mostly by a good deal, except for the frame's own
/// recoil, which little damps.
/// </remarks>
public sealed record SnapThrough
{
    /// <summary>Two springs in a row, energy, momentum.</summary>
    public static readonly Citation Source = Citation.Mechanics("elastic energy of frame and oil in a row; all of it turned to motion");

    /// <summary>What presses are commonly built to take backwards.</summary>
    public static readonly Citation ReversalSource = Citation.Practice("presses are built to take about a tenth of their rated force in reverse");

    /// <summary>Share of the rated force that presses are commonly built to take backwards.</summary>
    public const double UsualReversal = 0.1;

    private const double Steel = 7850;

    /// <summary>Ram force at which it lets go, N.</summary>
    public required double Force { get; init; }
    /// <summary>Energy in the frame, J.</summary>
    public required double InFrame { get; init; }
    /// <summary>Energy in the oil, J.</summary>
    public required double InOil { get; init; }
    /// <summary>How far frame and oil together push the ram on before the force is gone, m.</summary>
    public required double FreeTravel { get; init; }
    /// <summary>Mass of the ram's rod over its stroke, kg: the least that moves with it.</summary>
    public required double RamMass { get; init; }

    /// <summary>All the energy, J.</summary>
    public double Energy => InFrame + InOil;

    /// <summary>Reversed force of the frame's own recoil, undamped, N: as much as it was stretched with.</summary>
    public double Recoil => Force;

    /// <summary>Reversed force on cylinder mount and bolts if the frame has to catch all of the energy, N: √(2 k E). Never reached, never passed.</summary>
    public double GreatestReversal => InFrame > 0 ? Force * Math.Sqrt(Energy / InFrame) : 0;

    /// <summary>Speed of the ram if it takes all the energy, m/s.</summary>
    public double RamSpeed => SpeedOf(RamMass);

    /// <summary>Speed of one loose piece if it takes all the energy, m/s: no piece can leave faster.</summary>
    /// <param name="mass">kg, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass that is not above zero.</exception>
    public double SpeedOf(double mass) => Math.Sqrt(2 * Energy / Check.Positive(mass));

    /// <summary>At another ram force: all energies go with its square.</summary>
    /// <param name="force">N, above zero.</param>
    public SnapThrough At(double force)
    {
        double times = Check.Positive(force) / Force;
        return this with { Force = force, InFrame = InFrame * times * times, InOil = InOil * times * times, FreeTravel = FreeTravel * times };
    }

    /// <summary>From the give of frame and oil.</summary>
    /// <param name="F">Ram force, N, above zero.</param>
    /// <param name="frameGive">Give of the frame (with its tie rods), m/N, above zero.</param>
    /// <param name="oilGive">Give of the oil: V/(K A²), m/N, 0 or more.</param>
    /// <param name="ramMass">Mass that moves with the ram, kg, above zero.</param>
    /// <param name="w">Where to write it down.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static SnapThrough Of(double F, double frameGive, double oilGive, double ramMass, Working? w = null)
    {
        Check.Positive(F);
        Check.Positive(frameGive);
        Check.NotNegative(oilGive);
        Check.Positive(ramMass);
        var snap = new SnapThrough
        {
            Force = F,
            InFrame = frameGive * F * F / 2,
            InOil = oilGive * F * F / 2,
            FreeTravel = F * (frameGive + oilGive),
            RamMass = ramMass,
        };
        if (w is null)
            return snap;
        w.Step("E_f", "energy in the frame", "c_f F² / 2", snap.InFrame, Dimension.Energy, StoredEnergy.Elastic, ("c_f", frameGive, Dimension.Number), ("F", F, Dimension.Force));
        w.Step("E_o", "energy in the oil", "c_o F² / 2", snap.InOil, Dimension.Energy, StoredEnergy.Elastic, ("c_o", oilGive, Dimension.Number), ("F", F, Dimension.Force));
        w.Step("x", "how far the ram is pushed on before the force is gone", "F (c_f + c_o)", snap.FreeTravel, Dimension.Length, Source,
            ("F", F, Dimension.Force), ("c_f", frameGive, Dimension.Number), ("c_o", oilGive, Dimension.Number));
        w.Step("v", "greatest speed of the ram", "√(2 (E_f + E_o) / m)", snap.RamSpeed, Dimension.Speed, Source,
            ("E_f", snap.InFrame, Dimension.Energy), ("E_o", snap.InOil, Dimension.Energy), ("m", ramMass, Dimension.Mass));
        w.Step("F_rev", "greatest reversed force, if the frame catches everything", "F √((E_f + E_o) / E_f)", snap.GreatestReversal, Dimension.Force, Source,
            ("F", F, Dimension.Force), ("E_f", snap.InFrame, Dimension.Energy), ("E_o", snap.InOil, Dimension.Energy));
        return snap;
    }

    /// <summary>For a press at the most its pump can give, ram fully out.</summary>
    internal static SnapThrough Of(PowerReport power, double frameGive, RigCylinder cylinder)
    {
        double A = power.Areas.Push, oil = power.TruePressure > 0 ? power.Decompression / power.TruePressure / (A * A) : 0;
        double rod = Math.PI / 4 * (cylinder.Rod * cylinder.Rod - cylinder.Hole * cylinder.Hole);
        return Of(power.MostPossibleForce, frameGive, oil, Steel * rod * cylinder.Stroke);
    }
}
