using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>From oil pressure to ram force on one press, the return spring taken at full stroke.</summary>
internal sealed record OilForce(RigCylinder Cylinder, CylinderAreas Areas)
{
    /// <summary>What is got at the ram, N: less seals and spring.</summary>
    public double Net(double p, Working? w = null)
    {
        double S = Cylinder.SpringPreload > 0 || Cylinder.SpringRate > 0
            ? RamForce.Spring(Cylinder.SpringPreload, Cylinder.SpringRate, Cylinder.Stroke, w)
            : 0;
        return RamForce.Net(p, Areas.Force, Cylinder.SealFriction, S, w);
    }

    /// <summary>What the oil does with nothing lost, N.</summary>
    public double Thrust(double p) => p * Areas.Force;
}
