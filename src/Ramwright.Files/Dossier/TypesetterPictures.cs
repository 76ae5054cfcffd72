namespace Ramwright.Files.Dossier;

/// <content>Drawings: on a page of their own, among text, or two beside each other.</content>
internal sealed partial class Typesetter
{
    /// <summary>Height that a drawing among text is made smaller to, points.</summary>
    private const double Tallest = 330;

    /// <summary>Size on paper over its own size: one, but for what may be made smaller.</summary>
    private double Scale(Picture picture) => picture.Shrinks ? Math.Min(1, Math.Min(Width / (picture.Sheet.Width * PdfSheet.Mm), (1 - 3 * (1 - _tight)) * Tallest / (picture.Sheet.Height * PdfSheet.Mm))) : 1;

    private double Tall(Picture picture) => Scale(picture) * picture.Sheet.Height * PdfSheet.Mm;

    /// <summary>Between two drawings side by side.</summary>
    private const double Gutter = 12;

    private static bool IsNarrow(Block block) => block is Picture { OwnPage: false, Caption.Length: 0 } picture && picture.Sheet.Width * PdfSheet.Mm <= (Leaf.Short - Leaf.Left - Leaf.Right - Gutter) / 2;

    private void Beside(Picture one, Picture other)
    {
        if (Now.Landscape)
            Turn();
        double tall = Math.Max(Tall(one), Tall(other)), column = (Width + Gutter) / 2;
        Keep(tall + 10);
        double top = _y;
        Now.Add(on => PdfSheet.Draw(on, one.Sheet, Leaf.Left, top + tall - Tall(one), Scale(one)));
        Now.Add(on => PdfSheet.Draw(on, other.Sheet, Leaf.Left + column, top + tall - Tall(other), Scale(other)));
        _y += tall + 10;
    }

    private void Show(Picture picture)
    {
        double scale = Scale(picture), wide = scale * picture.Sheet.Width * PdfSheet.Mm, tall = Tall(picture);
        if (picture.OwnPage)
        {
            bool landscape = wide > tall;
            if (_leaves.Count == 0 || _y > Leaf.Top || Now.Landscape != landscape || Now.Chapter != _chapter)
                Turn(landscape);

            // a sheet of the paper's own size is drawn at true size
            double x = (Now.Width - wide) / 2, y = (Now.Height - tall) / 2;
            Now.Add(on => PdfSheet.Draw(on, picture.Sheet, x, y));
            _y = Floor;
            return;
        }

        double caption = picture.Caption.Length > 0 ? 14 : 0;
        Keep(tall + caption + 6);
        double left = Leaf.Left + (IsNarrow(picture) ? 0 : Math.Max(0, (Width - wide) / 2)), top = _y;
        Now.Add(on => PdfSheet.Draw(on, picture.Sheet, left, top, scale));
        _y += tall + 4;
        if (caption > 0)
        {
            Now.Text(picture.Caption, Leaf.Left, _y + Small, Small, grey: true);
            _y += caption;
        }

        _y += 6;
    }
}
