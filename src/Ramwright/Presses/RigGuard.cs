namespace Ramwright.Presses;

/// <summary>What keeps hands out of the closing dies, with every number settled. SI.</summary>
/// <param name="StopTime">From letting go, or breaking the beam, to the ram standing still, s.</param>
public abstract record RigGuard(double StopTime)
{
    /// <summary>Settles what was said; null where nothing was.</summary>
    internal static RigGuard? Of(Guard? said) => said switch
    {
        null => null,
        TwoHandControl g => new RigTwoHandControl(Stop(g), g.Shrouded ?? false),
        LightCurtain g => new RigLightCurtain(Stop(g), Resolver.Needed(g.Resolution, "guard.resolution")),
        LightBeams g => new RigLightBeams(Stop(g), (int)(g.Beams ?? 1)),
        _ => new RigHoldToRun(Stop(said)),
    };

    private static double Stop(Guard guard) => Resolver.Needed(guard.StopTime, "guard.stop-time");
}

/// <summary>Two buttons that both hands hold.</summary>
/// <param name="StopTime">s.</param>
/// <param name="Shrouded">Whether covers keep a hand from reaching on.</param>
public sealed record RigTwoHandControl(double StopTime, bool Shrouded) : RigGuard(StopTime);

/// <summary>A curtain of light that sees a hand.</summary>
/// <param name="StopTime">s.</param>
/// <param name="Resolution">m.</param>
public sealed record RigLightCurtain(double StopTime, double Resolution) : RigGuard(StopTime);

/// <summary>Beams that see a body.</summary>
/// <param name="StopTime">s.</param>
/// <param name="Beams">How many.</param>
public sealed record RigLightBeams(double StopTime, int Beams) : RigGuard(StopTime);

/// <summary>A lever, pedal or button that must be held.</summary>
/// <param name="StopTime">s.</param>
public sealed record RigHoldToRun(double StopTime) : RigGuard(StopTime);
