using Ramwright.Ladders;
using Ramwright.Quantities;

namespace Ramwright.Web.Bench;

/// <summary>A ram force to look at the press under.</summary>
public enum LookAt
{
    Wanted,
    SafeTo,
    MostPossible,
    Own,
}

/// <summary>How one person looks at presses: units, and the ram force that parts are shaded for. Kept from page to page.</summary>
public sealed class ViewChoice
{
    /// <summary>The units asked for; null for those of the file's own tape.</summary>
    public UnitSystem? Units { get; set; }

    /// <summary>Who writes readings down.</summary>
    public string Who { get; set; } = "";

    public LookAt At { get; set; } = LookAt.Wanted;

    /// <summary>The force where <see cref="At"/> is one's own, N.</summary>
    public double? Own { get; set; }

    /// <summary>The ram force looked at, N.</summary>
    public double Force(PressCheck check) => At switch
    {
        LookAt.SafeTo => check.Ladder.SafeRating,
        LookAt.MostPossible => check.Power.MostPossibleForce,
        LookAt.Own when Own is { } own => own,
        _ => check.Rig.Wanted,
    };
}
