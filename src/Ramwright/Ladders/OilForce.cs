using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>From oil pressure to ram force on one press, the return spring taken at full stroke.</summary>
internal sealed record OilForce(RigCylinder Cylinder, CylinderAreas Areas)
{
    /// <summary>What is got at the ram, N: less seals and spring.</summary>
    public double Net(double p, Working? w = null) => RamForce.Net(p, Areas.Force, Cylinder.SealFriction, RamForce.Spring(Cylinder, w), w);

    /// <summary>What the oil does with nothing lost, N.</summary>
    public double Thrust(double p) => p * Areas.Force;
}
