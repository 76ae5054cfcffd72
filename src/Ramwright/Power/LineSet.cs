using Ramwright.Presses;

namespace Ramwright.Power;

/// <summary>The lines of one duty, one after the other, ready for many flows. Each counts with its fittings, an entry and an exit.</summary>
internal readonly struct LineSet
{
    private readonly RigLine[] _lines;
    private readonly double[] _sumK;
    private readonly double _nu;
    private readonly double _rho;

    public LineSet(IReadOnlyList<RigLine> lines, LineDuty duty, double nu, double rho)
    {
        int n = 0;
        foreach (RigLine line in lines)
            n += line.Duty == duty ? 1 : 0;
        _lines = n == 0 ? [] : new RigLine[n];
        _sumK = n == 0 ? [] : new double[n];
        n = 0;
        foreach (RigLine line in lines)
        {
            if (line.Duty == duty)
            {
                _sumK[n] = Fitting.Sum(line.Fittings);
                _lines[n++] = line;
            }
        }

        _nu = nu;
        _rho = rho;
    }

    public bool IsEmpty => _lines.Length == 0;

    /// <summary>Oil the lines hold, m³.</summary>
    public double Volume
    {
        get
        {
            double V = 0;
            foreach (RigLine line in _lines)
                V += Math.PI * line.Bore * line.Bore / 4 * line.Length;
            return V;
        }
    }

    /// <summary>Pressure lost at a flow, Pa; the flow was checked.</summary>
    public double Loss(double Q)
    {
        double dp = 0;
        for (int i = 0; i < _lines.Length; i++)
        {
            RigLine line = _lines[i];
            double D = line.Bore, u = 4 * Q / (Math.PI * D * D), Re = u * D / _nu;
            if (Re >= LineFlow.Still)
                dp += (LineFlow.Factor(Re) * line.Length / D + _sumK[i]) * _rho * u * u / 2;
        }

        return dp;
    }

    /// <summary>The least the lines can lose for each m³/s: laminar, no ends. Pa·s/m³.</summary>
    public double LaminarResistance
    {
        get
        {
            double r = 0;
            foreach (RigLine line in _lines)
                r += 128 * _nu * _rho * line.Length / (Math.PI * Math.Pow(line.Bore, 4));
            return r;
        }
    }
}
