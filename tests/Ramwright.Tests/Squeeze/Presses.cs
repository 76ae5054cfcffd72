using Ramwright.Files;
using Ramwright.Jobs;
using Ramwright.Ladders;
using Ramwright.Power;
using Ramwright.Presses;
using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>Presses and work for the tests of this room.</summary>
internal static class Presses
{
    public const double Bar = 1e5, Lpm = 1e-3 / 60;

    private static readonly Lazy<PressCheck> RailingShop = new(() => Example("railing-shop")), WherryYard = new(() => Example("wherry-yard"));

    /// <summary>A 20 t press on an air pump.</summary>
    public static PressCheck Air => RailingShop.Value;
    /// <summary>A 25 t press on a two-stage electric pack, double acting.</summary>
    public static PressCheck Electric => WherryYard.Value;

    public static PressCheck Example(string name)
    {
        string folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "examples")))
            folder = Path.GetDirectoryName(folder)!;
        return CheckedPress.Of(PressOnDisk.Open(Path.Combine(folder, "examples", name + ".press.yaml"))).Check!;
    }

    /// <summary>A press with other parts; its frame as stiff as wanted.</summary>
    public static SqueezePress With(PressCheck like, Func<Rig, Rig> change, double compliance, double? walls = null)
    {
        Rig rig = change(like.Rig);
        return SqueezePress.Of(rig, PowerStudy.Of(rig.Cylinder, rig.Pump, rig.Lines, rig.Oil), compliance, walls);
    }

    /// <summary>Square bar to half its height under a 40 mm die.</summary>
    public static SqueezeWork Square(double side, double T, double carbon = 0.002, double to = 0.5, double coldest = 800) => new()
    {
        Resistance = new HotBite { Law = new ShidaFlow(carbon), Height = side, Width = side, Bite = 0.04, Target = to * side, DieLength = 0.2 },
        OutAtTouch = 0.08,
        Hot = new HotWork(T, 100, coldest),
    };

    /// <summary>A single-acting ram of 75 mm with nothing lost: no spring, no seals, no lines.</summary>
    public static Rig Bare(Rig rig) => rig with
    {
        Lines = [],
        Cylinder = rig.Cylinder with { SealFriction = 0, SpringPreload = 0, SpringRate = 0, PullsByOil = false, Bore = 0.075, Rod = 0.06, Stroke = 0.16, Regeneration = Regeneration.Never },
    };
}
