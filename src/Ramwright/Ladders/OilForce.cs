using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>From oil pressure to ram force on one press, the return spring taken at full stroke.</summary>
internal sealed record OilForce(RigCylinder Cylinder, CylinderAreas Areas)
{
    /// <summary>What is got at the ram, N: less seals and spring.</summary>
    public double Net(double p, Working? w = null) => RamForce.Net(p, Areas.Force, Cylinder.SealFriction, RamForce.Spring(Cylinder, w), w);

    /// <summary>The pressure that gives a force at the ram, Pa; what is lost grows in proportion from a bar on.</summary>
    public double PressureFor(double force)
    {
        const double bar = 1e5;
        double atOne = Net(bar), slope = (Net(101 * bar) - atOne) / (100 * bar);
        return bar + (force - atOne) / slope;
    }

    /// <summary>What the oil does with nothing lost, N.</summary>
    public double Thrust(double p) => p * Areas.Force;
}
