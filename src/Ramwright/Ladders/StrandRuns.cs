using Ramwright.Frame;
using Ramwright.Stock;
using Ramwright.Strength;
using Ramwright.Workings;

namespace Ramwright.Ladders;

/// <summary>The strands of a part from end to end: what presses on each in each load case, and how far it is from tipping.</summary>
internal sealed class StrandRuns
{
    private readonly record struct Run(double Force, double MostMoment, double EndRatio);

    private readonly FrameResponse _response;
    private readonly PlanPart _part;
    private readonly int[][] _chains;
    private readonly Run[][] _runs;     // by load case, by chain
    private readonly (double Fy, double Chi)[][] _chi;
    private readonly SectionProperties _section;
    private readonly bool _tips;
    private readonly double _lopsided;
    private readonly BucklingCurve _curve;

    public StrandRuns(FrameResponse response, PlanPart part)
    {
        (_response, _part) = (response, part);
        Shape strand = part.Member.Shape.Strands[0].Shape;
        (_section, _tips, _curve) = (strand.Properties, Tipping.CanTip(strand), Tipping.Curve(strand));
        _lopsided = Tipping.Lopsided(strand);
        _chains = Chains(response.Plan.Model, part.Beams, part.Member.Shape.Strands.Count);
        _runs = [.. response.Solutions.Select(s => _chains.Select(c => Of(s, c)).ToArray())];
        _chi = [.. _runs.Select(r => new (double, double)[r.Length])];
    }

    /// <summary>Transverse force that the ram lays on the strand at a station, N per newton.</summary>
    public double Force(FrameSolution solution, PlanStation station)
    {
        (int at, int chain) = Found(solution, station);
        return _runs[at][chain].Force;
    }

    /// <summary>χ_LT of the strand at a station.</summary>
    public double Chi(FrameSolution solution, PlanStation station, double fy, Working? w)
    {
        (int at, int chain) = Found(solution, station);
        if (w is not null)
            return Chi(_runs[at][chain], fy, w);
        // the same all along a strand, as long as all of its section counts
        ref (double Fy, double Chi) known = ref _chi[at][chain];
        if (known.Fy != fy)
            known = (fy, Chi(_runs[at][chain], fy, null));
        return known.Chi;
    }

    private double Chi(Run run, double fy, Working? w)
    {
        if (!_tips || !(run.MostMoment > 1 / Limit.Farthest))
            return 1;
        double L = _part.Clear, Fcr;
        if (_lopsided > 0)
            w?.Note($"A T is lopsided: that counts like a load standing higher ({Tipping.TeeSource}), whichever way it is bent.");
        bool pressed = run.Force * L / 4 > 1e-3 * run.MostMoment;
        if (_part.Sideways == PlanHold.LoadedTip)
        {
            if (!pressed)
                return 1;
            w?.Note("Held at its root and free at its tip; the force acts at the edge it pushes against.");
            double P = Tipping.TipForce(_section, L, Edge + _lopsided, w);
            Fcr = P / run.Force;
            w?.Step("F_cr", "ram force at which a perfect bar would tip", "P / f", Fcr, Quantities.Dimension.Force, Tipping.CantileverSource,
                ("P", P, Quantities.Dimension.Force), ("f", run.Force, Quantities.Dimension.Force));
        }
        else if (_part.Sideways == PlanHold.BothEnds && pressed)
        {
            w?.Note("Held at both ends against turning over; the force acts at the edge it pushes against, at the middle; fixed ends are not counted in its favour.");
            double Mcr = Tipping.Mcr(_section, L, Tipping.C1Middle, Tipping.C2Middle, Edge + _lopsided / Tipping.C2Middle, w), free = run.Force * L / 4;
            Fcr = Mcr / free;
            w?.Step("F_cr", "ram force at which a perfect bar would tip", "M_cr / (f L / 4)", Fcr, Quantities.Dimension.Force, Tipping.CriticalSource,
                ("M_cr", Mcr, Quantities.Dimension.Moment), ("f", run.Force, Quantities.Dimension.Force), ("L", L, Quantities.Dimension.Length));
        }
        else
        {
            bool free = _part.Sideways == PlanHold.FreeEnd;
            w?.Note(free ? "Its upper end is free to move sideways: twice its length counts." : "Held at both ends against turning over; bent by moments at its ends.");
            double Mcr = Tipping.Mcr(_section, free ? 2 * L : L, free ? 1 : Tipping.EndMoments(run.EndRatio), 1, _lopsided, w);
            Fcr = Mcr / run.MostMoment;
            w?.Step("F_cr", "ram force at which a perfect bar would tip", "M_cr / M", Fcr, Quantities.Dimension.Force, Tipping.CriticalSource,
                ("M_cr", Mcr, Quantities.Dimension.Moment), ("M", run.MostMoment, Quantities.Dimension.Moment));
        }

        return Tipping.Reduction(Fcr, run.MostMoment, _section.Wely, fy, _curve, w);
    }

    /// <summary>The farther edge, on the safe side.</summary>
    private double Edge => Math.Max(_section.Top, _section.Bottom);

    private (int Case, int Chain) Found(FrameSolution solution, PlanStation station)
    {
        int at = 0;
        while (!ReferenceEquals(_response.Solutions[at], solution))
            at++;
        for (int i = 0; i < _chains.Length; i++)
        {
            if (Array.IndexOf(_chains[i], station.Beam) >= 0)
                return (at, i);
        }

        throw new ArgumentException($"no strand of the {_part.Member.Part} is looked at there", nameof(station));
    }

    private Run Of(FrameSolution solution, int[] chain)
    {
        int last = chain[^1];
        Actions first = solution.At(chain[0], 0), end = solution.At(last, solution.Length(last));
        double most = Math.Max(Math.Abs(first.My), Math.Abs(end.My));
        foreach (PlanStation station in _part.Stations)
        {
            if (Array.IndexOf(chain, station.Beam) >= 0)
                most = Math.Max(most, Math.Abs(solution.At(station.Beam, station.X).My));
        }

        double force = _part.Sideways == PlanHold.LoadedTip ? Math.Abs(end.Vz) : Math.Abs(first.Vz - end.Vz);
        bool rising = Math.Abs(first.My) < Math.Abs(end.My);
        double greater = rising ? end.My : first.My, smaller = rising ? first.My : end.My;
        return new Run(force, most, greater == 0 ? 1 : smaller / greater);
    }

    /// <summary>Beams that follow each other, one chain a strand; an upright's left and right are chains of their own.</summary>
    private static int[][] Chains(FrameModel model, IReadOnlyList<int> beams, int strands)
    {
        var all = new List<List<int>>();
        for (int i = 0; i < beams.Count; i++)
        {
            List<int>? before = i < strands ? null : all.Find(c => c[^1] == beams[i - strands]);
            if (before is not null && model.Members[before[^1]].To == model.Members[beams[i]].From)
                before.Add(beams[i]);
            else
                all.Add([beams[i]]);
        }

        return [.. all.Select(c => c.ToArray())];
    }
}
