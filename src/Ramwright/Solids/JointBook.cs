using System.Collections.Concurrent;
using Ramwright.Presses;

namespace Ramwright.Solids;

/// <summary>Springs of joints from local solids, each found once for its geometry and kept. May be asked from many threads.</summary>
public sealed class JointBook
{
    private readonly ConcurrentDictionary<string, RigSpring> _known = new();

    /// <summary>The joints it holds, by what describes them.</summary>
    public IReadOnlyDictionary<string, RigSpring> Joints => _known;

    /// <summary>Why a frame's joints are not found this way, in words; null where they are.</summary>
    public static string? Missing(Rig rig) => JointPlaces.Of(rig).Missing;

    /// <summary>Takes in a joint that was found before.</summary>
    public void Add(string geometry, RigSpring spring) => _known[geometry] = spring ?? throw new ArgumentNullException(nameof(spring));

    /// <summary>Springs at a frame's joints, as far as they are known already; null where one is missing, or is not found this way.</summary>
    public RigSprings? Known(Rig rig)
    {
        try
        {
            return JointPlaces.Of(rig).Places is var (upper, lower) && _known.TryGetValue(upper.Text, out RigSpring? high) && _known.TryGetValue(lower.Text, out RigSpring? low)
                ? new RigSprings(high, low) : null;
        }
        catch (SolidFaultException)
        {
            return null;        // a shape that is not drawn as a solid has no such joint
        }
    }

    /// <summary>A press with the springs that are known of its joints, if any.</summary>
    public static Rig Springing(Rig rig, JointBook? book)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return book?.Known(rig) is { } springs ? rig with { Springs = springs } : rig;
    }

    /// <summary>Springs at a frame's joints, found now where they are not known; null where its joints are not found this way, as <see cref="Missing"/> says.</summary>
    /// <param name="rig">The press.</param>
    /// <param name="progress">Told how far it is, 0 to 1.</param>
    /// <param name="stop">Ends it early.</param>
    /// <exception cref="SolidFaultException">A frame that cannot be drawn.</exception>
    public RigSprings? Of(Rig rig, Action<double>? progress = null, CancellationToken stop = default)
    {
        if (JointPlaces.Of(rig).Places is not var (upper, lower))
            return null;
        PressSolid? whole = null;
        int found = 0, wanted = new[] { upper.Text, lower.Text }.Distinct().Count(t => !_known.ContainsKey(t));
        RigSpring Find(JointPlace place) => _known.GetOrAdd(place.Text, _ =>
        {
            int before = found++;
            return LocalJoint.Of(whole ??= PressSolid.Of(rig), place, share => progress?.Invoke(Math.Min(1, (before + share) / Math.Max(1, wanted))), stop);
        });
        return new RigSprings(Find(upper), Find(lower));
    }
}
