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
        Assert.True(Sections.Shelf.TryThread(name, out MetricThread? thread));

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
        Assert.True(Sections.Shelf.TryThread(written, out MetricThread? thread));

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
}
