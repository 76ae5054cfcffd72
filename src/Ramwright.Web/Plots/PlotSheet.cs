using System.Globalization;
using System.Xml.Linq;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using OxyPlot.Series;

namespace Ramwright.Web.Plots;

/// <summary>
/// A plot drawn to SVG on the server, in the bench's own lines. Colours are set by class in the style sheet, so that one drawing serves
/// light, dark and paper, and no style stands in the markup.
/// </summary>
internal static class PlotSheet
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // each stands for a class of the style sheet
    private static readonly OxyColor Ink = OxyColor.FromRgb(1, 1, 1), Soft = OxyColor.FromRgb(2, 2, 2), Hair = OxyColor.FromRgb(3, 3, 3);

    private static readonly Dictionary<string, string> Classes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["rgb(1,1,1)"] = "ink",
        ["rgb(2,2,2)"] = "soft",
        ["rgb(3,3,3)"] = "hair",
        ["rgb(4,4,4)"] = "one",
        ["rgb(5,5,5)"] = "two",
        ["rgb(6,6,6)"] = "want",
        ["rgb(7,7,7)"] = "true",
        ["rgb(8,8,8)"] = "most",
    };

    /// <summary>Colour of the first line, drawn through.</summary>
    public static OxyColor One { get; } = OxyColor.FromRgb(4, 4, 4);

    /// <summary>Colour of the second line, dashed.</summary>
    public static OxyColor Two { get; } = OxyColor.FromRgb(5, 5, 5);

    /// <summary>Colour of the wanted force, as on the ladder.</summary>
    public static OxyColor Wanted { get; } = OxyColor.FromRgb(6, 6, 6);

    /// <summary>Colour of the true force, as on the ladder.</summary>
    public static OxyColor True { get; } = OxyColor.FromRgb(7, 7, 7);

    /// <summary>Colour of the most possible force, as on the ladder.</summary>
    public static OxyColor Most { get; } = OxyColor.FromRgb(8, 8, 8);

    public static PlotModel Empty() => new()
    {
        DefaultFont = "Arial",
        DefaultFontSize = 14,
        TextColor = Ink,
        PlotAreaBorderColor = Soft,
        PlotAreaBorderThickness = new OxyThickness(1, 0, 0, 1),
        Padding = new OxyThickness(4, 8, 14, 4),
    };

    public static LinearAxis Axis(AxisPosition position, string title, string? key = null, bool grid = true, double least = 0, double? most = null) => new()
    {
        Position = position,
        Title = title,
        Key = key,
        Minimum = least,
        Maximum = most ?? double.NaN,
        MinimumPadding = 0,
        MaximumPadding = 0.06,
        AxislineStyle = LineStyle.Solid,
        AxislineColor = Soft,
        TicklineColor = Soft,
        TextColor = Ink,
        TitleColor = Ink,
        MajorGridlineStyle = grid ? LineStyle.Solid : LineStyle.None,
        MajorGridlineColor = Hair,
        MinorTickSize = 0,
        AxisTitleDistance = position is AxisPosition.Bottom ? 8 : 16,
        StringFormat = "0.######",
    };

    public static LineSeries Line(string title, IEnumerable<(double X, double Y)> points, bool second = false, bool marks = false, string? yAxis = null)
    {
        var line = new LineSeries
        {
            Title = title,
            Color = second ? Two : One,
            StrokeThickness = 2.5,
            LineStyle = second ? LineStyle.Dash : LineStyle.Solid,
            MarkerType = marks ? second ? MarkerType.Square : MarkerType.Circle : MarkerType.None,
            MarkerFill = second ? Two : One,
            MarkerSize = 4,
            YAxisKey = yAxis,
        };
        line.Points.AddRange(points.Select(p => new DataPoint(p.X, p.Y)));
        return line;
    }

    /// <summary>A band between two lines, shaded, without edges.</summary>
    public static AreaSeries Band(string title, IEnumerable<(double X, double Low, double High)> points)
    {
        var band = new AreaSeries { Title = title, Color = OxyColors.Transparent, Color2 = OxyColors.Transparent, Fill = Hair, StrokeThickness = 0 };
        foreach ((double x, double low, double high) in points)
        {
            band.Points.Add(new DataPoint(x, low));
            band.Points2.Add(new DataPoint(x, high));
        }

        return band;
    }

    /// <summary>A level line across the plot with its words.</summary>
    /// <param name="y">Where.</param>
    /// <param name="words">The words.</param>
    /// <param name="colour">Its colour.</param>
    /// <param name="style">Its dashes.</param>
    /// <param name="at">Where along it the words end, 0 to 1: lines that may lie close together have theirs in different places.</param>
    /// <param name="isBelow">Whether they stand below it, not above.</param>
    public static OxyPlot.Annotations.LineAnnotation Level(double y, string words, OxyColor colour, LineStyle style, double at, bool isBelow = false) => new()
    {
        Type = OxyPlot.Annotations.LineAnnotationType.Horizontal,
        Y = y,
        Text = words,
        Color = colour,
        TextColor = Ink,
        LineStyle = style,
        StrokeThickness = 2,
        TextLinePosition = at,
        TextMargin = 9,
        TextHorizontalAlignment = HorizontalAlignment.Right,
        TextVerticalAlignment = isBelow ? VerticalAlignment.Top : VerticalAlignment.Bottom,
    };

    public static Legend Key(LegendPosition position = LegendPosition.TopRight) => new()
    {
        LegendPlacement = LegendPlacement.Outside,
        LegendPosition = position,
        LegendOrientation = LegendOrientation.Horizontal,
        LegendTextColor = Ink,
        LegendSymbolLength = 34,
        LegendBorderThickness = 0,
    };

    /// <summary>Draws it.</summary>
    /// <param name="model">The plot.</param>
    /// <param name="title">What it shows, for those who do not see it.</param>
    /// <param name="width">Pixels.</param>
    /// <param name="height">Pixels.</param>
    public static string Write(PlotModel model, string title, double width, double height)
    {
        var exporter = new SvgExporter { Width = width, Height = height, IsDocument = false, UseVerticalTextAlignmentWorkaround = false };
        XElement root = XElement.Parse(exporter.ExportToString(model));
        string Size(double x) => x.ToString("0", CultureInfo.InvariantCulture);
        var svg = new XElement(Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Size(width)} {Size(height)}"), new XAttribute("role", "img"), new XAttribute("aria-label", title));
        foreach (XElement child in root.Elements())
        {
            if (Kept(child) is { } kept)
                svg.Add(kept);
        }

        return svg.ToString(SaveOptions.DisableFormatting);
    }

    // Styles become attributes, colours become classes. Clips are left out: their names would be the same in every plot of a page, and
    // all that is drawn lies within the axes.
    private static XElement? Kept(XElement of)
    {
        if (of.Name.LocalName == "defs")
            return null;
        var kept = new XElement(Svg + of.Name.LocalName);
        var classes = new List<string>();
        foreach (XAttribute attribute in of.Attributes().Where(a => !a.IsNamespaceDeclaration))
        {
            if (attribute.Name == "style")
            {
                foreach (string rule in attribute.Value.Split(';', StringSplitOptions.RemoveEmptyEntries))
                {
                    if (rule.Split(':', 2) is [var name, var value])
                        Put(name.Trim(), value.Trim());
                }
            }
            else
            {
                Put(attribute.Name.LocalName, attribute.Value);
            }
        }

        // the words of a level line stand clear of it
        if ((string?)kept.Attribute("text-anchor") == "end" && (string?)kept.Attribute("dominant-baseline") is { } edge && edge is "text-after-edge" or "hanging")
            kept.SetAttributeValue("dy", edge == "hanging" ? "4" : "-4");
        if (classes.Count > 0)
            kept.SetAttributeValue("class", string.Join(' ', classes));
        foreach (XNode node in of.Nodes())
        {
            if (node is XElement inside)
                kept.Add(Kept(inside));
            else
                kept.Add(node);
        }

        return kept;

        void Put(string name, string value)
        {
            if (name is "fill" or "stroke" && Colour(value) is { } colour)
                classes.Add($"{(name == "fill" ? "f" : "s")}-{colour}");
            else if (name is not ("font-family" or "clip-path"))
                // what stands on a line keeps its descenders off it
                kept.SetAttributeValue(name, name == "dominant-baseline" && value == "baseline" ? "text-after-edge" : value);
        }
    }

    private static string? Colour(string value) => Classes.GetValueOrDefault(value.Replace(" ", "", StringComparison.Ordinal));
}
