using Ramwright.Quantities;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Files;

/// <summary>One thing in stock and what is known of it.</summary>
/// <param name="Kind"><c>section</c>, <c>steel</c>, <c>bolt class</c>, <c>thread</c>, <c>oil</c>, <c>hose</c>, <c>port thread</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Facts">What is known: symbol, meaning, value, dimension.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Caution">What its user must be told, or empty.</param>
public sealed record StockItem(
    string Kind, string Name, IReadOnlyList<(string Symbol, string Meaning, double Si, Dimension Dimension)> Facts, Citation Source, string Caution);

/// <summary>Finds things in stock by name, part of a name, or kind and size: <c>100x50 channel</c>.</summary>
public static class StockFacts
{
    /// <summary>Everything that goes by this name; the thing itself where the name is whole, else all that it fits.</summary>
    public static IReadOnlyList<StockItem> Find(string name, Shelf shelf)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var found = new List<StockItem>();
        if (SectionText.TryRead(name, shelf, null, out Shape? shape, out _))
            found.Add(Of(shape));
        if (shelf.TrySteel(name, out Steel? steel))
            found.Add(Of(steel));
        if (shelf.TryThread(name, out ScrewThread? thread))
            found.Add(Of(thread));
        if (shelf.TryOil(name, out OilGrade? oil))
            found.Add(Of(oil));
        if (shelf.TryPort(name, out PortThread? port))
            found.Add(Of(port));
        found.AddRange(shelf.Classes.Where(c => Shelf.SameName(c.Name, name)).Select(Of));
        if (found.Count > 0)
            return found;

        string key = Shelf.Key(name);
        bool Has(string s) => key.Length > 0 && Shelf.Key(s).Contains(key, StringComparison.Ordinal);
        return
        [
            .. SectionSearch.Find(name, shelf.Sections).Select(Of),
            .. shelf.Steels.Where(s => Has(s.Name)).Select(Of),
            .. shelf.Threads.Where(t => Has(t.Name)).Select(Of),
            .. shelf.Classes.Where(c => Has(c.Name)).Select(Of),
            .. shelf.Hoses.Where(h => Has(h.Type)).Select(Of),
            .. shelf.Oils.Where(o => Has(o.Name)).Select(Of),
            .. shelf.Ports.Where(p => Has(p.Name)).Select(Of),
        ];
    }

    private static StockItem Of(Shape shape)
    {
        SectionProperties p = shape.Properties;
        var facts = new List<(string, string, double, Dimension)>
        {
            ("h", "depth", p.Height, Dimension.Length), ("b", "width", p.Width, Dimension.Length),
            ("A", "area", p.A, Dimension.Area), ("G", "mass", shape.Mass, Dimension.MassPerLength),
            ("I_y", "second moment, strong way", p.Iy, Dimension.SecondMoment), ("W_el,y", "elastic modulus", p.Wely, Dimension.SectionModulus),
            ("W_pl,y", "plastic modulus", p.Wply, Dimension.SectionModulus),
            ("I_z", "second moment, weak way", p.Iz, Dimension.SecondMoment), ("W_el,z", "elastic modulus", p.Welz, Dimension.SectionModulus),
            ("W_pl,z", "plastic modulus", p.Wplz, Dimension.SectionModulus),
            ("A_vz", "shear area of the web", p.Avz, Dimension.Area), ("I_t", "torsion", p.It, Dimension.SecondMoment),
        };
        if (shape.PrintedMass is { } printed)
            facts.Insert(4, ("G_t", "mass as the table prints it", printed, Dimension.MassPerLength));
        if (!shape.BendsAskew)
            return new StockItem("section", shape.Name, facts, shape.Source, "");

        facts.Add(("I_u", "second moment, greatest, about its slanted axis", p.Principal.Iu, Dimension.SecondMoment));
        facts.Add(("I_v", "second moment, least, about its slanted axis", p.Principal.Iv, Dimension.SecondMoment));
        return new StockItem("section", shape.Name, facts, shape.Source,
            $"Alone it bends askew and twists: a press file takes two of them back to back, 2 x {shape.Name}.");
    }

    private static StockItem Of(Steel steel) =>
        new("steel", steel.Name,
            [.. steel.Bands.SelectMany(b => new[]
            {
                ("f_y", $"yield, up to {Readout.Text(b.UpTo, Dimension.Length)}", b.Fy, Dimension.Stress),
                ("f_u", $"tensile, up to {Readout.Text(b.UpTo, Dimension.Length)}", b.Fu, Dimension.Stress),
            })],
            steel.Source, steel.Refused.Length > 0 ? $"{steel.Caution} It is refused in a press file." : steel.Caution);

    private static StockItem Of(PropertyClass c) =>
        new("bolt class", $"{c.Name}, over {Readout.Text(c.Above, Dimension.Length)} to {Readout.Text(c.UpTo, Dimension.Length)}",
            [("S_p", "proof stress", c.Sp, Dimension.Stress), ("f_yb", "yield", c.Fyb, Dimension.Stress), ("f_ub", "tensile", c.Fub, Dimension.Stress)],
            c.Source, "");

    private static StockItem Of(ScrewThread thread) =>
        new("thread", thread.Name,
            [("d", "major diameter", thread.D, Dimension.Length), ("P", "pitch", thread.P, Dimension.Length), ("A_s", "stress area", thread.As, Dimension.Area)],
            thread.Form.StressArea, "");

    private static StockItem Of(OilGrade oil) =>
        new("oil", oil.Name,
            [("ν_40", "viscosity at 40 °C", oil.Nu40, Dimension.KinematicViscosity), ("ν_100", "viscosity at 100 °C", oil.Nu100, Dimension.KinematicViscosity),
             ("ρ", "density", oil.Density, Dimension.Density)],
            oil.Source, "");

    private static StockItem Of(HoseGrade hose) =>
        new("hose", $"{hose.Type}, {Readout.Text(hose.Bore, Dimension.Length)}",
            hose.BendRadius is { } bend
                ? [("p", "working pressure", hose.WorkingPressure, Dimension.Pressure), ("r", "least bend radius, at the inside", bend, Dimension.Length)]
                : [("p", "working pressure", hose.WorkingPressure, Dimension.Pressure)],
            hose.Source, "");

    private static StockItem Of(PortThread port) =>
        new("port thread", port.Name,
            [("d", "major diameter", port.D, Dimension.Length), ("P", "pitch", port.P, Dimension.Length),
             ("α", "angle between the flanks", port.Facts.Flank * Math.PI / 180, Dimension.Angle), ("k", "taper", port.Facts.Taper, Dimension.Ratio)],
            port.Source, "Sealed by " + port.Facts.How + ".");
}
