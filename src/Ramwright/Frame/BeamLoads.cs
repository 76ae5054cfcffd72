namespace Ramwright.Frame;

/// <summary>The loads along members of one case, in the members' own axes, strung together member by member.</summary>
internal sealed class BeamLoads
{
    private readonly BeamLoad[] _loads;
    private readonly int[] _first;

    /// <summary>None.</summary>
    public static readonly BeamLoads None = new([], []);

    public BeamLoads(ReadOnlySpan<Beam> beams, IReadOnlyList<MemberLoad> loads)
    {
        _first = new int[beams.Length];
        Array.Fill(_first, -1);
        _loads = new BeamLoad[loads.Count];
        for (int i = loads.Count - 1; i >= 0; i--)
        {
            int member = loads[i].Member;
            _loads[i] = BeamLoad.Of(beams[member], loads[i], _first[member]);
            _first[member] = i;
        }
    }

    /// <summary>Number of the first load on a member; −1 if it has none.</summary>
    public int First(int member) => _loads.Length == 0 ? -1 : _first[member];

    public ref readonly BeamLoad this[int load] => ref _loads[load];
}
