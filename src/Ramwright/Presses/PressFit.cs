using Ramwright.Quantities;

namespace Ramwright.Presses;

/// <summary>A shaft, bush or bearing pressed in.</summary>
[Says("a shaft, bush or bearing pressed in"), Kind("press-fit")]
public sealed record PressFit : Job
{
    /// <summary>The joint.</summary>
    [Needed, Says("the joint")]
    public FitJoint? Joint { get; init; }

    /// <summary>Yield of the hub, to compare its stress with.</summary>
    [Says("steel of the hub, to compare its stress with"), StockName(StockKind.Steel, "S355")]
    public string? HubSteel { get; init; }
}
