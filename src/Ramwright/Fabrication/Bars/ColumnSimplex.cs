namespace Ramwright.Fabrication.Bars;

/// <summary>
/// A small linear programme to which columns are added one by one: least cost, the first rows at least their need, the others at
/// most. Dense, with the inverse of the basis kept; for some dozens of rows.
/// </summary>
internal sealed class ColumnSimplex
{
    private const double Tiny = 1e-10;
    private readonly double[][] _inverse;
    private readonly double[] _level, _cost;
    private readonly List<(double[] Column, double Cost)> _columns = [];
    private readonly int _rows;

    /// <param name="need">Right-hand sides, none below zero.</param>
    /// <param name="atLeast">How many of the first rows are at least theirs.</param>
    /// <param name="missing">Cost of leaving one unit of need unmet.</param>
    public ColumnSimplex(double[] need, int atLeast, double missing)
    {
        _rows = need.Length;
        _level = (double[])need.Clone();
        _cost = new double[_rows];
        _inverse = new double[_rows][];
        for (int i = 0; i < _rows; i++)
        {
            // unmet need, or spare bars
            _columns.Add((Unit(i, 1), i < atLeast ? missing : 0));
            _cost[i] = _columns[i].Cost;
            _inverse[i] = Unit(i, 1);
        }

        for (int i = 0; i < atLeast; i++)
            _columns.Add((Unit(i, -1), 0));         // more than needed
    }

    private double[] Unit(int row, double value)
    {
        var column = new double[_rows];
        column[row] = value;
        return column;
    }

    /// <summary>Dual prices of the rows.</summary>
    public double[] Prices()
    {
        var prices = new double[_rows];
        for (int i = 0; i < _rows; i++)
        {
            if (_cost[i] == 0)
                continue;
            for (int r = 0; r < _rows; r++)
                prices[r] += _cost[i] * _inverse[i][r];
        }

        return prices;
    }

    /// <summary>Adds a column and goes on to the least cost.</summary>
    public void Enter(double[] column, double cost)
    {
        _columns.Add((column, cost));
        // each pivot lowers the cost; degenerate ones end by taking the first column that may enter
        for (int pivot = 0; pivot < 50 * (_rows + _columns.Count); pivot++)
        {
            double[] prices = Prices();
            int enter = -1;
            double most = 1e-9;
            for (int c = _columns.Count - 1; c >= 0; c--)
            {
                double gain = -_columns[c].Cost;
                for (int r = 0; r < _rows; r++)
                    gain += prices[r] * _columns[c].Column[r];
                if (gain > most)
                    (enter, most) = (c, pivot < 10 * _rows ? gain : double.MaxValue / 2);
            }

            if (enter < 0 || !Pivot(enter))
                return;
        }
    }

    private bool Pivot(int enter)
    {
        var step = new double[_rows];
        for (int i = 0; i < _rows; i++)
        {
            for (int r = 0; r < _rows; r++)
                step[i] += _inverse[i][r] * _columns[enter].Column[r];
        }

        int leave = -1;
        double least = double.PositiveInfinity;
        for (int i = 0; i < _rows; i++)
        {
            if (step[i] > Tiny && _level[i] / step[i] < least - Tiny)
                (leave, least) = (i, _level[i] / step[i]);
        }

        if (leave < 0)
            return false;
        double[] row = _inverse[leave];
        for (int r = 0; r < _rows; r++)
            row[r] /= step[leave];
        _level[leave] = least;
        for (int i = 0; i < _rows; i++)
        {
            if (i == leave || step[i] == 0)
                continue;
            for (int r = 0; r < _rows; r++)
                _inverse[i][r] -= step[i] * row[r];
            _level[i] = Math.Max(0, _level[i] - step[i] * least);
        }

        _cost[leave] = _columns[enter].Cost;
        return true;
    }
}
