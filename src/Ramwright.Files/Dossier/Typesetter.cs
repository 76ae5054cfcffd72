namespace Ramwright.Files.Dossier;

/// <summary>Lays blocks out on pages, from top to bottom.</summary>
internal sealed partial class Typesetter
{
    public const double Body = 9.2, Leading = 12.6, Small = 7.9, SmallLeading = 10.4;

    private readonly List<Leaf> _leaves = [];
    private string _chapter = "";
    private double _y, _tight = 1;

    public IReadOnlyList<Leaf> Leaves => _leaves;

    private Leaf Now => _leaves[^1];
    private double Width => Now.Width - Leaf.Left - Leaf.Right;
    private double Floor => Now.Height - Leaf.Bottom;

    /// <summary>How close lines and gaps may be set so that a few lines do not take a page of their own.</summary>
    private static readonly double[] Tightness = [1, 0.96, 0.92, 0.88];

    /// <summary>A last page filled by less than this share is not worth its paper.</summary>
    private const double Scant = 0.22;

    /// <summary>Sets a chapter, on a new page unless the one before took next to nothing of its own; a little closer where that saves a page of a few lines.</summary>
    /// <returns>The page it begins on, from 1.</returns>
    public int Begin(Chapter chapter)
    {
        (string before, double y, int leaves, int marks) = (_chapter, _y, _leaves.Count, _leaves.Count > 0 ? Now.Marks : 0);
        int page = 0, most = 0;
        foreach (double tight in Tightness)
        {
            _tight = tight;
            page = Lay(chapter);
            bool scant = !Now.Landscape && _leaves.Count > leaves + 1 && _y < Leaf.Top + Scant * (Floor - Leaf.Top);
            most = tight == 1 ? _leaves.Count : most;
            if (tight == 1 ? !scant : _leaves.Count < most)
                return page;
            Back();
        }

        _tight = 1;
        return Lay(chapter);

        void Back()
        {
            _leaves.RemoveRange(leaves, _leaves.Count - leaves);
            if (leaves > 0)
                Now.Undo(marks);
            (_chapter, _y) = (before, y);
        }
    }

    private int Lay(Chapter chapter)
    {
        _chapter = chapter.Name;
        if (chapter.Blocks is [Picture { OwnPage: true }, ..])
        {
            // a drawing as large as the page bears its own title
            int drawn = _leaves.Count + 1;
            Set(chapter.Blocks);
            return drawn;
        }

        bool goesOn = _leaves.Count > 0 && !Now.Landscape && _y < Leaf.Top + 90;
        if (goesOn)
            _y += 26;
        else
            Turn();
        int page = _leaves.Count;
        foreach (string line in Wrapping.Lines(chapter.Name, Width, 17, true))
        {
            Now.Text(line, Leaf.Left, _y + 15, 17, heavy: true);
            _y += 22;
        }

        Now.Rule(Leaf.Left, _y + 1, Now.Width - Leaf.Right, _y + 1, 0.9);
        _y += 14;
        Set(chapter.Blocks);
        return page;
    }

    /// <summary>Begins the front page.</summary>
    public void Front(Book book, Func<Chapter, int> page)
    {
        Turn();
        _y += 26;
        foreach (string line in Wrapping.Lines(book.Title, Width, 28, true))
        {
            Now.Text(line, Leaf.Left, _y + 24, 28, heavy: true);
            _y += 34;
        }

        Now.Text(book.Subtitle, Leaf.Left, _y + 12, 12, grey: true);
        _y += 26;
        Now.Rule(Leaf.Left, _y, Now.Width - Leaf.Right, _y, 1.4);
        _y += 16;
        Set(book.Front);
        _y += 8;
        Keep(30 + book.Chapters.Count * 15.0);
        Set(new Heading("Contents"));
        foreach (Chapter chapter in book.Chapters)
        {
            Keep(15);
            string number = $"{page(chapter)}";
            double from = Leaf.Left + Faces.Width(chapter.Name, 10) + 4, to = Now.Width - Leaf.Right - Faces.Width(number, 10) - 4, y = _y + 10;
            Now.Text(chapter.Name, Leaf.Left, y, 10);
            Now.Text(number, Now.Width - Leaf.Right, y, 10, right: true);
            Now.Add(on => on.DrawLine(new PdfSharp.Drawing.XPen(PdfSharp.Drawing.XColor.FromGrayScale(0.6), 0.5) { DashPattern = [1, 4] }, from, y - 1, to, y - 1));
            _y += 15;
        }
    }

    private void Turn(bool landscape = false)
    {
        _leaves.Add(new Leaf(_chapter, landscape));
        _y = Leaf.Top;
    }

    /// <summary>Turns the page unless so much room is left on it.</summary>
    private bool Keep(double room)
    {
        if (_y + room <= Floor || _y <= Leaf.Top)
            return false;
        Turn();
        return true;
    }

    private void Set(IReadOnlyList<Block> blocks)
    {
        for (int i = 0; i < blocks.Count; i++)
        {
            if (blocks[i] is Heading)
                Keep(Together(blocks, i));
            if (IsNarrow(blocks[i]) && i + 1 < blocks.Count && IsNarrow(blocks[i + 1]))
                Beside((Picture)blocks[i], (Picture)blocks[++i]);
            else
                Set(blocks[i]);
        }
    }

    /// <summary>Height of a heading with what must not be torn from it: its paragraph, and a drawing or the beginning of a table.</summary>
    private double Together(IReadOnlyList<Block> blocks, int at)
    {
        double tall = 22;
        for (int i = at + 1; i < blocks.Count; i++)
        {
            switch (blocks[i])
            {
                case Prose p:
                    tall += Wrapping.Lines(p.Text, Width, p.Tone == Tone.Quiet ? Small : Body).Count * Leading + 5;
                    continue;
                case Picture { OwnPage: false } picture:
                    double other = IsNarrow(picture) && i + 1 < blocks.Count && IsNarrow(blocks[i + 1]) ? Tall((Picture)blocks[i + 1]) : 0;
                    return tall + Math.Max(Tall(picture), other) + 10;
                case StepLine:
                    return tall + 46;
                default:
                    return tall + 44;
            }
        }

        return tall;
    }

    private void Set(Block block)
    {
        if (block is not Picture && Now.Landscape)
            Turn();
        switch (block)
        {
            case Heading h:
                Head(h);
                break;
            case Prose p:
                Say(p);
                break;
            case Items items:
                List(items);
                break;
            case Facts facts:
                foreach (FactSetter fact in facts.Rows.Select(row => new FactSetter(row, Width)))
                {
                    Keep(fact.Height);
                    _y = fact.Set(Now, _y);
                }

                _y += 6;
                break;
            case Grid grid:
                _y = new GridSetter(grid, Width, _tight).Set(() => Now, _y, () => { Turn(); return _y; }) + 9;
                break;
            case Picture picture:
                Show(picture);
                break;
            case StepLine step:
                var setter = new StepSetter(step, Width);
                Keep(setter.Height);
                _y = setter.Set(Now, _y);
                break;
            case NewPage:
                if (_y > Leaf.Top)
                    Turn();
                break;
        }
    }

    private void Head(Heading h)
    {
        double size = h.Level == 2 ? 12 : 10;
        _y += _y > Leaf.Top + 40 ? (h.Level == 2 ? 8 : 5) : 0;
        foreach (string line in Wrapping.Lines(h.Text, Width, size, true))
        {
            Now.Text(line, Leaf.Left, _y + size, size, heavy: true);
            _y += size * 1.35;
        }

        _y += 3;
    }

    private void Say(Prose p)
    {
        double size = p.Tone == Tone.Quiet ? Small : p.Tone == Tone.Loud ? 12 : Body, leading = _tight * (p.Tone == Tone.Quiet ? SmallLeading : p.Tone == Tone.Loud ? 16.5 : Leading);
        double inset = p.Tone == Tone.Warn ? 10 : 0;
        foreach (string line in Wrapping.Lines(p.Text, Width - inset, size, p.Tone == Tone.Loud))
        {
            Keep(leading);
            if (p.Tone == Tone.Warn)
                Now.Fill(Leaf.Left, _y, 3, leading, 0.1);
            Now.Text(line, Leaf.Left + inset, _y + size, size, p.Tone == Tone.Loud, p.Tone == Tone.Quiet);
            _y += leading;
        }

        _y += 5;
    }

    private void List(Items items)
    {
        double indent = items.Mark == ItemMark.Number ? 20 : items.Mark == ItemMark.Box ? 17 : 12;
        for (int i = 0; i < items.Texts.Count; i++)
        {
            IReadOnlyList<string> lines = Wrapping.Lines(items.Texts[i], Width - indent, Body);
            double leading = _tight * Leading;
            Keep((lines.Count <= 3 ? lines.Count : 2) * leading);
            double y = _y;
            switch (items.Mark)
            {
                case ItemMark.Number:
                    Now.Text($"{i + 1}", Leaf.Left + indent - 6, _y + Body, Body, heavy: true, right: true);
                    break;
                case ItemMark.Box:
                    Now.Add(on => on.DrawRectangle(new PdfSharp.Drawing.XPen(PdfSharp.Drawing.XColors.Black, 0.7), Leaf.Left + 1, y + 1.6, 8.5, 8.5));
                    break;
                default:
                    Now.Text("–", Leaf.Left + 2, _y + Body, Body);
                    break;
            }

            foreach (string line in lines)
            {
                Keep(leading);
                Now.Text(line, Leaf.Left + indent, _y + Body, Body);
                _y += leading;
            }

            _y += _tight * (items.Mark == ItemMark.Box ? 4 : 2);
        }

        _y += 4;
    }
}
