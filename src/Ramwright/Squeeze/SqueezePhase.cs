namespace Ramwright.Squeeze;

/// <summary>The parts of a squeeze.</summary>
public enum SqueezePhase
{
    /// <summary>Down to the touch.</summary>
    Approach,
    /// <summary>Under load.</summary>
    Pressing,
    /// <summary>Held down.</summary>
    Dwell,
    /// <summary>The oil let off.</summary>
    LetOff,
    /// <summary>Up again.</summary>
    Return,
}

/// <summary>What ended the pressing.</summary>
public enum SqueezeEnd
{
    /// <summary>The job was done.</summary>
    Done,
    /// <summary>The relief valve took all the oil.</summary>
    ReliefOpened,
    /// <summary>The pump could give no more: stalled on its air, its motor or the person.</summary>
    PumpStalled,
    /// <summary>The air in the receiver had fallen too low.</summary>
    AirRanOut,
    /// <summary>The steel fell below its forging range.</summary>
    TooCold,
    /// <summary>The ram came to the end of its stroke.</summary>
    OutOfStroke,
    /// <summary>The tank had no more oil to give.</summary>
    OutOfOil,
    /// <summary>It went on longer than anybody waits.</summary>
    TooSlow,
}

/// <summary>What stood in the way of a job that was not done.</summary>
public enum StoppedBy
{
    /// <summary>Nothing: it was done.</summary>
    Nothing,
    /// <summary>The press: even at the heat of the touch the work needs more force than it has.</summary>
    Force,
    /// <summary>The steel: it had force enough at the heat of the touch, but the steel went cold first.</summary>
    Cold,
    /// <summary>Stroke or oil.</summary>
    Reach,
    /// <summary>Air.</summary>
    Air,
    /// <summary>Time.</summary>
    Speed,
}
