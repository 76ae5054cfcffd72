using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Stock;

public class ThreadTest
{
    private static readonly string[] Classes = ["4.6", "8.8", "10.9", "12.9"];

    // P, d1, As; then proof and ultimate load of each class, kN. The standard rounds to three figures.
    [Theory]
    [InlineData("F-01", "M8", 1.25, 6.647, 36.6, new double[] { 8.24, 14.6, 21.2, 29.2, 30.4, 38.1, 35.5, 44.6 })]
    [InlineData("F-02", "M10", 1.5, 8.376, 58.0, new double[] { 13.0, 23.2, 33.7, 46.4, 48.1, 60.3, 56.3, 70.8 })]
    [InlineData("F-03", "M12", 1.75, 10.106, 84.3, new double[] { 19.0, 33.7, 48.9, 67.4, 70.0, 87.7, 81.8, 103 })]
    [InlineData("F-04", "M14", 2, 11.835, 115, new double[] { 25.9, 46.0, 66.7, 92.0, 95.5, 120, 112, 140 })]
    [InlineData("F-05", "M16", 2, 13.835, 157, new double[] { 35.3, 62.8, 91.0, 125, 130, 163, 152, 192 })]
    [InlineData("F-06", "M18", 2.5, 15.294, 192, new double[] { 43.2, 76.8, 115, 159, 159, 200, 186, 234 })]
    [InlineData("F-07", "M20", 2.5, 17.294, 245, new double[] { 55.1, 98.0, 147, 203, 203, 255, 238, 299 })]
    [InlineData("F-08", "M22", 2.5, 19.294, 303, new double[] { 68.2, 121, 182, 252, 252, 315, 294, 370 })]
    [InlineData("F-09", "M24", 3, 20.752, 353, new double[] { 79.4, 141, 212, 293, 293, 367, 342, 431 })]
    [InlineData("F-10", "M27", 3, 23.752, 459, new double[] { 103, 184, 275, 381, 381, 477, 445, 560 })]
    [InlineData("F-11", "M30", 3.5, 26.211, 561, new double[] { 126, 224, 337, 466, 466, 583, 544, 684 })]
    [InlineData("F-12", "M33", 3.5, 29.211, 694, new double[] { 156, 278, 416, 576, 576, 722, 673, 847 })]
    [InlineData("F-13", "M36", 4, 31.670, 817, new double[] { 184, 327, 490, 678, 678, 850, 792, 997 })]
    public void Coarse_threads_carry_their_printed_loads(string id, string name, double P, double d1, double As, double[] loads)
    {
        var row = new Reference(id, $"{name}: ISO 898-1 by fastener-supplier tables", Trust.FoundAndRecomputed);
        Assert.True(Sections.Shelf.TryThread(name, out ScrewThread? thread));

        row.Exactly("P, mm", P, Math.Round(thread.P * 1e3, 6));
        row.Near("d1, mm", d1, thread.D1 * 1e3, 0.0001);
        row.Near("As, mm²", As, thread.As * 1e6, 0.005);
        for (int i = 0; i < Classes.Length; i++)
        {
            Assert.True(Sections.Shelf.TryClass(Classes[i], thread.D, out PropertyClass? c));
            row.Near($"{Classes[i]} proof load, kN", loads[2 * i], thread.As * c.Sp / 1e3, 0.008);
            row.Near($"{Classes[i]} ultimate load, kN", loads[2 * i + 1], thread.As * c.Rm / 1e3, 0.008);
        }
    }

    [Theory]
    [InlineData("m36x2", 36, 2, "M36x2")]
    [InlineData("M 36 × 1.5", 36, 1.5, "M36x1.5")]
    [InlineData("M24x3", 24, 3, "M24")]
    [InlineData("M75x4", 75, 4, "M75x4")]
    public void Fine_threads_are_read_from_their_name(string written, double d, double p, string name)
    {
        Assert.True(Sections.Shelf.TryThread(written, out ScrewThread? thread));

        Near.Relative(d / 1e3, thread.D, 1e-12);
        Near.Relative(p / 1e3, thread.P, 1e-12);
        Assert.Equal(name, thread.Name);
    }

    [Theory]
    [InlineData("M23")]
    [InlineData("M36x0")]
    [InlineData("M36x20")]
    [InlineData("M36x-2")]
    [InlineData("Mx2")]
    [InlineData("36x2")]
    [InlineData("M1e3x2")]
    [InlineData("")]
    public void What_is_no_thread_is_not_found(string written) => Assert.False(Sections.Shelf.TryThread(written, out _));

    [Fact]
    public void Classes_beyond_M39_are_marked_as_practice()
    {
        Assert.True(Sections.Shelf.TryClass("8.8", 0.048, out PropertyClass? thick));
        Assert.True(Sections.Shelf.TryClass("8.8", 0.039, out PropertyClass? last));

        Assert.Equal(Standing.Practice, thick.Source.Standing);
        Assert.Equal(Standing.Published, last.Source.Standing);
        Assert.False(Sections.Shelf.TryClass("8.8", 0.1, out _));
        Assert.False(Sections.Shelf.TryClass("8.8", double.NaN, out _));
    }

    // threads to the inch, stress area in²; proof and tensile load of SAE 2, 5 and 8, lbf
    [Theory]
    [InlineData("1/4-20 UNC", 20, 0.0318, 1750, 2350, 2700, 3800, 3800, 4750)]
    [InlineData("5/16-18 UNC", 18, 0.0524, 2900, 3900, 4450, 6300, 6300, 7850)]
    [InlineData("3/8-16 UNC", 16, 0.0775, 4250, 5750, 6600, 9300, 9300, 11600)]
    [InlineData("1/2-13 UNC", 13, 0.1419, 7800, 10500, 12100, 17000, 17000, 21300)]
    [InlineData("5/8-11 UNC", 11, 0.226, 12400, 16700, 19200, 27100, 27100, 33900)]
    [InlineData("3/4-10 UNC", 10, 0.334, 18400, 24700, 28400, 40100, 40100, 50100)]
    [InlineData("7/8-9 UNC", 9, 0.462, 15200, 27700, 39300, 55400, 55400, 69300)]
    [InlineData("1-8 UNC", 8, 0.606, 20000, 36400, 51500, 72700, 72700, 90900)]
    [InlineData("1-1/4-7 UNC", 7, 0.969, 32000, 58100, 71700, 101700, 116300, 145400)]
    [InlineData("1-1/2-6 UNC", 6, 1.405, 46400, 84300, 104000, 147500, 168600, 210800)]
    [InlineData("1/2-20 UNF", 20, 0.1599, 8800, 11800, 13600, 19200, 19200, 24000)]
    [InlineData("3/4-16 UNF", 16, 0.373, 20500, 27600, 31700, 44800, 44800, 56000)]
    [InlineData("1-12 UNF", 12, 0.663, 21900, 39800, 56400, 79600, 79600, 99500)]
    public void Inch_threads_carry_their_printed_loads(
        string name, double tpi, double As, double proof2, double break2, double proof5, double break5, double proof8, double break8)
    {
        const double lbf = 4.4482216, rounded = 0.007;
        var row = new Reference("SAE J429", $"{name}: ASME B1.1 stress area, SAE J429 loads", Trust.FromMemoryAndRecomputed);
        Assert.True(Sections.Shelf.TryThread(name, out ScrewThread? thread));

        row.Near("threads to the inch", tpi, 0.0254 / thread.P, 1e-9);
        row.Near("As, in²", As, thread.As / (0.0254 * 0.0254), 0.003);
        foreach ((string grade, double proof, double breaking) in ((string, double, double)[])[("SAE 2", proof2, break2), ("SAE 5", proof5, break5), ("SAE 8", proof8, break8)])
        {
            Assert.True(Sections.Shelf.TryClass(grade, thread.D, out PropertyClass? c));
            row.Near($"{grade} proof load, lbf", proof, thread.As * c.Sp / lbf, rounded);
            row.Near($"{grade} tensile load, lbf", breaking, thread.As * c.Rm / lbf, rounded);
            Assert.Null(c.AlphaV);
        }
    }

    // in²
    [Theory]
    [InlineData("1-1/8-8 UN", 0.790)]
    [InlineData("1-1/4-8 UN", 1.000)]
    [InlineData("1-1/2-8 UN", 1.492)]
    [InlineData("2-8 UN", 2.77)]
    [InlineData("2-4.5 UNC", 2.50)]
    public void Thick_studding_has_its_printed_stress_area(string name, double As)
    {
        var row = new Reference("ASME B1.1", $"{name}: stress area", Trust.FromMemoryAndRecomputed);
        Assert.True(Sections.Shelf.TryThread(name, out ScrewThread? thread));

        row.Near("As, in²", As, thread.As / (0.0254 * 0.0254), 0.003);
    }

    [Theory]
    [InlineData("3/4 UNC", "3/4-10 UNC")]
    [InlineData("3/4\"-10 unc", "3/4-10 UNC")]
    [InlineData("3/4-16", "3/4-16 UNF")]
    [InlineData("0.75 UNF", "3/4-16 UNF")]
    [InlineData("1 in UNF", "1-12 UNF")]
    [InlineData("1-8 UNC", "1-8 UNC")]
    [InlineData("1 1/4 - 7 UNC", "1-1/4-7 UNC")]
    [InlineData("1-1/8 8UN", "1-1/8-8 UN")]
    [InlineData("3/4-12 UN", "3/4-12 UN")]
    [InlineData("1-1/4 inch 10 tpi", "1-1/4-10 UN")]
    public void Inch_threads_are_read_as_people_write_them(string written, string name)
    {
        Assert.True(Sections.Shelf.TryThread(written, out ScrewThread? thread));

        Assert.Equal(name, thread.Name);
        Assert.Equal(ThreadForm.Unified, thread.Form);
    }

    [Theory]
    [InlineData("3/4")]
    [InlineData("1 in")]
    [InlineData("6-32 UNC")]
    [InlineData("3/4-10 UNF")]
    [InlineData("1/0-10 UNC")]
    [InlineData("3/4-0")]
    [InlineData("9-4 UNC")]
    public void Inch_names_that_leave_it_open_are_not_found(string written) => Assert.False(Sections.Shelf.TryThread(written, out _));

    [Theory]
    [InlineData("grade 5", "SAE 5")]
    [InlineData("Gr 8", "SAE 8")]
    [InlineData("ASTM A193 B7", "B7")]
    public void Inch_grades_go_by_their_common_names(string written, string name)
    {
        Assert.True(Sections.Shelf.TryClass(written, 0.0254, out PropertyClass? found));
        Assert.True(Sections.Shelf.TryClass(name, 0.0254, out PropertyClass? plain));

        Assert.Equal((plain.Sp, plain.Fub), (found.Sp, found.Fub));
    }

    [Fact]
    public void B7_studding_has_its_printed_strengths()
    {
        var row = new Reference("A193 B7", "ASTM A193 grade B7, up to 2-1/2 in", Trust.FromMemory);
        Assert.True(Sections.Shelf.TryClass("B7", 0.0254, out PropertyClass? b7));

        row.Near("tensile, ksi", 125, b7.Rm / 6894757.293, 1e-6);
        row.Near("yield, ksi", 105, b7.Re / 6894757.293, 1e-6);
        Assert.True(b7.Sp < b7.Re);
        Assert.Equal(Standing.Practice, b7.Source.Standing);
    }
}
