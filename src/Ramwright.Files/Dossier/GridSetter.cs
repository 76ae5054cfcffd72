namespace Ramwright.Files.Dossier;

/// <summary>Lays a table out: rows stay whole, the head is repeated on every page.</summary>
internal sealed class GridSetter
{
    private const double Size = Typesetter.Small + 0.2, Pad = 3.5;
    private readonly double _leading, _pen, _padUp;

    private readonly Grid _grid;
    private readonly double _width;
    private readonly double[] _at, _wide;

    public GridSetter(Grid grid, double width, double tight = 1)
    {
        (_leading, _pen, _padUp) = (tight * Typesetter.SmallLeading, tight * 19, Pad * (1 - 4 * (1 - tight)));
        (_grid, _width) = (grid, width);
        double shares = grid.Columns.Sum(c => c.Share), x = Leaf.Left;
        _at = new double[grid.Columns.Count];
        _wide = new double[grid.Columns.Count];
        for (int i = 0; i < _at.Length; i++)
        {
            _at[i] = x;
            _wide[i] = width * grid.Columns[i].Share / shares;
            x += _wide[i];
        }
    }

    /// <summary>Lays it out from a height on.</summary>
    /// <param name="now">The page that is written on.</param>
    /// <param name="y">Where it begins.</param>
    /// <param name="turn">Turns the page and gives where that begins.</param>
    /// <returns>Where it ends.</returns>
    public double Set(Func<Leaf> now, double y, Func<double> turn)
    {
        double Floor() => now().Height - Leaf.Bottom;
        IReadOnlyList<string>[] head = [.. _grid.Columns.Select((c, i) => Wrapping.Lines(c.Head, _wide[i] - 2 * Pad, Size - 0.3, true))];
        double headTall = head.Max(h => h.Count) * _leading + 2 * _padUp - 2;
        if (y + headTall + _pen + (_grid.Caption.Length > 0 ? 14 : 0) > Floor())
            y = turn();
        if (_grid.Caption.Length > 0)
        {
            now().Text(_grid.Caption, Leaf.Left, y + Typesetter.Body, Typesetter.Body, heavy: true);
            y += 15;
        }

        y = Head(now(), y, head, headTall);
        for (int r = 0; r < _grid.Rows.Count; r++)
        {
            bool heavy = _grid.Heavy.Contains(r);
            IReadOnlyList<string>[] cells = [.. _grid.Rows[r].Select((c, i) => Wrapping.Lines(c, _wide[i] - 2 * Pad, Size, heavy))];
            double tall = Math.Max(cells.Max(c => c.Count) * _leading + 2 * _padUp - 2, _grid.Ruled ? _pen : 0);
            if (y + tall > Floor())
            {
                y = turn();
                y = Head(now(), y, head, headTall);
            }

            Row(now(), y, cells, heavy);
            y += tall;
            now().Rule(Leaf.Left, y, Leaf.Left + _width, y, _grid.Ruled ? 0.5 : 0.3, grey: !_grid.Ruled);
            if (_grid.Ruled)
                Uprights(now(), y - tall, y);
        }

        return y;
    }

    private double Head(Leaf leaf, double y, IReadOnlyList<string>[] head, double tall)
    {
        leaf.Fill(Leaf.Left, y, _width, tall, 0.91);
        for (int i = 0; i < head.Length; i++)
            Cell(leaf, i, y, head[i], true, Size - 0.3);
        leaf.Rule(Leaf.Left, y + tall, Leaf.Left + _width, y + tall, 0.7);
        if (_grid.Ruled)
        {
            leaf.Rule(Leaf.Left, y, Leaf.Left + _width, y, 0.7);
            Uprights(leaf, y, y + tall);
        }

        return y + tall;
    }

    private void Uprights(Leaf leaf, double top, double bottom)
    {
        for (int i = 0; i <= _at.Length; i++)
        {
            double x = i < _at.Length ? _at[i] : Leaf.Left + _width;
            leaf.Rule(x, top, x, bottom, 0.5);
        }
    }

    private void Row(Leaf leaf, double y, IReadOnlyList<string>[] cells, bool heavy)
    {
        for (int i = 0; i < cells.Length; i++)
            Cell(leaf, i, y, cells[i], heavy, Size);
    }

    private void Cell(Leaf leaf, int i, double y, IReadOnlyList<string> lines, bool heavy, double size)
    {
        bool right = _grid.Columns[i].Right;
        for (int n = 0; n < lines.Count; n++)
            leaf.Text(lines[n], right ? _at[i] + _wide[i] - Pad : _at[i] + Pad, y + _padUp + n * _leading + size - 1, size, heavy, right: right);
    }
}
