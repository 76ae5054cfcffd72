using Ramwright.Quantities;
using Ramwright.Stock;

namespace Ramwright.Presses;

/// <summary>Settles press fits and pulls.</summary>
internal static class ResolveFits
{
    public static RigPressFit Of(PressFit said, string path, string name, Shelf shelf, Assumptions assume) => new()
    {
        Name = name,
        Kind = ResolveJobs.KindOf(said),
        Path = path,
        Tools = said.Tools,
        Joint = Joint(Resolver.Needed(said.Joint, $"{path}.joint"), $"{path}.joint", assume),
        HubSteel = said.HubSteel is null ? null : ResolveJobs.Steel(said.HubSteel, 0.016, $"{path}.hub-steel", shelf, assume),
        Assumed = assume.Made,
    };

    public static RigPull Of(Pull said, string path, string name, RigCylinder cylinder, Assumptions assume)
    {
        RigFitJoint? joint = said.Joint is { } of ? Joint(of, $"{path}.joint", assume) : null;
        return new RigPull
        {
            Name = name,
            Kind = ResolveJobs.KindOf(said),
            Path = path,
            Tools = said.Tools,
            Joint = joint,
            Seized = joint is null ? 1 : assume.Or(said.Seized, $"{path}.seized", 2, Dimension.Number, "some years in place: 1.5 to 3 are common, rust can do worse"),
            Force = said.Force ?? 0,
            Travel = assume.Or(said.Travel, $"{path}.travel", joint?.Length ?? 0.05, Dimension.Length, joint is null ? "until it lets go" : "the length of the joint"),
            ByRod = said.ByRod ?? cylinder.Hole > 0,
            Assumed = assume.Made,
        };
    }

    private static RigFitJoint Joint(FitJoint said, string path, Assumptions assume)
    {
        double d = Resolver.Needed(said.Diameter, $"{path}.diameter");
        IsoFit fit = said.Interference is { } measured ? new IsoFit(measured, measured)
            : IsoFit.Of(Resolver.Needed(said.Fit, $"{path}.fit"), d) ?? throw new ArgumentException($"'{path}.fit' is not in the table; read the press with its faults first");
        // DIN 7190: 0.8 of both roughnesses are rubbed flat
        double rubbed = 0.8 * 2 * assume.Or(said.Roughness, $"{path}.roughness", 0, Dimension.Length, "not counted: the force is then at its highest");
        return new RigFitJoint
        {
            D = d,
            Length = Resolver.Needed(said.Length, $"{path}.length"),
            HubOutside = Resolver.Needed(said.HubOutside, $"{path}.hub-outside"),
            ShaftBore = said.ShaftBore ?? 0,
            Least = Math.Max(0, fit.Least - rubbed),
            Most = Math.Max(0, fit.Most - rubbed),
            Hub = assume.Or(said.Hub, $"{path}.hub", FitMetal.Steel, "most are"),
            Shaft = assume.Or(said.Shaft, $"{path}.shaft", FitMetal.Steel, "most are"),
            IsBearing = said.Bearing ?? false,
            Friction = assume.Or(said.Friction, $"{path}.friction", 0.12, Dimension.Number, "steel on steel, lightly oiled: 0.12 to 0.15"),
        };
    }
}
