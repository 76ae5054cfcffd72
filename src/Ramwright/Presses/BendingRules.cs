using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Presses;

/// <summary>Bends and straightenings that cannot be.</summary>
internal static class BendingRules
{
    public static void Check(VBend said, string path, PressFrame? frame, List<Fault> faults)
    {
        JobRules.OnTheBed(said.Length, "the bend", $"{path}.length", frame, faults);
        if (said.Opening is { } v && said.Thickness is { } t && v < 4 * t)
        {
            faults.Add(new Fault($"{path}.opening", $"the V is only {Readout.Number(v / t, 2)} times the plate's thickness: the plate would be coined and torn, not bent",
                new Remark("6 to 12 times the thickness: {0}", Remark.Of(8 * t, Dimension.Length)), Against: $"{path}.thickness"));
        }

        if (said.OtherLeg < said.Leg)
            faults.Add(new Fault($"{path}.other-leg", "the longer leg is the shorter one", "the shorter leg as leg", Against: $"{path}.leg"));
        if (said.Opening is null && said.Dies is { Count: > 0 } dies && said.Thickness is { } thick && dies.All(d => d?.Opening < 4 * thick))
            faults.Add(new Fault($"{path}.dies", "every V-die is narrower than 4 times the plate's thickness", new Remark("one of about {0}", Remark.Of(8 * thick, Dimension.Length)), Against: $"{path}.thickness"));
    }

    public static void Check(BarBend said, string path, PressFrame? frame, Shelf? shelf, List<Fault> faults)
    {
        JobRules.OnTheBed(said.Span, "the pair of supports", $"{path}.span", frame, faults);
        if (said.Heat is not null)
            SmithRules.Heat(said.Heat, SmithRules.Steel(null, said.Carbon, path, faults), path, faults);
        if (Bent(said.Bar, $"{path}.bar", shelf, faults) is not { } bar)
            return;
        double depth = Depth(Standing(bar, said.OnEdge == true));
        if (said.Span < 2 * depth)
            faults.Add(new Fault($"{path}.span", "so short a span shears and crushes the bar instead of bending it", "at least twice, better ten times the bar's depth", Against: $"{path}.bar"));
        if (said.Radius < depth)
            faults.Add(new Fault($"{path}.radius", "the bend is tighter than the bar is thick", "a radius to the centre line of at least the bar's depth", Against: $"{path}.bar"));
        JobRules.Fits(depth, bar.Name, $"{path}.bar", said, frame, faults);
    }

    public static void Check(Straighten said, string path, PressFrame? frame, Shelf? shelf, List<Fault> faults)
    {
        if (said.Bow is null && said.Runout is null)
            faults.Add(new Fault($"{path}.bow", "how far it is out of straight is not said", new Remark("bow: {0}, or runout: {1} as a dial shows in one turn", Remark.About(0.5e-3, Dimension.Length), Remark.About(1e-3, Dimension.Length))));
        else if (said.Bow is not null && said.Runout is not null)
            faults.Add(new Fault($"{path}.runout", "both bow and runout", "one of the two: the runout is twice the bow", Against: $"{path}.bow"));
        double? bow = said.Bow ?? said.Runout / 2;
        if (bow > said.Span / 20)
            faults.Add(new Fault(said.Bow is null ? $"{path}.runout" : $"{path}.bow", "so far out of straight it is a bend, not a bow", "less than a twentieth of the span", Against: $"{path}.span"));
        if (Bent(said.Bar, $"{path}.bar", shelf, faults) is not { } bar)
            return;
        double depth = Depth(Standing(bar, said.OnEdge == true));
        if (said.Span < 4 * depth)
            faults.Add(new Fault($"{path}.span", "so short a span cannot be straightened by bending", "at least four times the bar's depth", Against: $"{path}.bar"));
        JobRules.Fits(depth, bar.Name, $"{path}.bar", said, frame, faults);
    }

    /// <summary>The section as it is bent about its y axis: flats lie, unless on edge.</summary>
    public static Shape Standing(Shape bar, bool onEdge)
    {
        if (bar is not Flat flat)
            return bar;
        double h = onEdge ? Math.Max(flat.H, flat.T) : Math.Min(flat.H, flat.T), t = onEdge ? Math.Min(flat.H, flat.T) : Math.Max(flat.H, flat.T);
        return new Flat(h, t) { Name = flat.Name, Source = flat.Source };
    }

    /// <summary>Depth in the plane of bending, m.</summary>
    public static double Depth(Shape bar) => bar switch
    {
        Flat flat => flat.H,
        Round round => round.D,
        CircularHollow tube => tube.D,
        RectangularHollow box => box.H,
        _ => throw new ArgumentException($"{bar.Name} is no bar or tube"),
    };

    private static Shape? Bent(string? said, string path, Shelf? shelf, List<Fault> faults)
    {
        if (said is null || shelf is null || !SectionText.TryRead(said, shelf, out Shape? shape, out _))
            return null;
        if (shape is Flat or Round or CircularHollow or RectangularHollow)
            return shape;
        faults.Add(new Fault(path, $"bending {shape.Name} is not reckoned here", "round, square or flat bar, CHS, SHS or RHS"));
        return null;
    }
}
