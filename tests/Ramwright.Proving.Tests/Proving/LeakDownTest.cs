using Ramwright.Ladders;
using Ramwright.Proving;
using Ramwright.Quantities;
using Ramwright.Workings;

namespace Ramwright.Tests.Proving;

public class LeakDownTest
{
    [Fact]
    public void AFallIsOilLost()
    {
        var row = new Reference("UP-11", "V Δp / K: 2 L, 1.2 GPa, 9 bar in 10 min", Trust.OwnNumbers);
        var w = new Working();
        double lost = LeakDown.OilLost(2e-3, 9e5, w);
        row.Near("lost, mL", 1.50, lost * 1e6, 0.005);
        row.Near("mL/min", 0.150, lost / 10 * 1e6, 0.005);
        row.Near("drift over 5026.5 mm², mm", 0.298, lost / 5026.5e-6 * 1e3, 0.005);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void OneDegreeLooksLikeALeak()
    {
        var row = new Reference("UP-12", "K (β − β_s) ΔT: 1 K", Trust.OwnNumbers);
        var w = new Working();
        row.Near("bar, steel counted", 7.97, LeakDown.FallByCooling(1, w) / 1e5, 0.005);
        WorkingCheck.Holds(w);
    }

    [Fact]
    public void CoolingIsTakenOffBeforeALeakIsCalledOne()
    {
        PressCheck check = ProvedPress.Press("wherry-yard");
        IReadOnlyList<LeakDown> leaks = LeakDown.Of(check, ProvedPress.Book(check,
            "leak-down 6 bar over=10 min volume=2 L oil=31 °C oil-after=30 °C", "leak-down 30 bar over=10 min volume=2 L oil=31 °C oil-after=30 °C", "leak-down 6 bar over=10 min volume=2 L"));
        Assert.True(leaks[0].MayBeCooling);
        Assert.Equal(0, leaks[0].Lost);
        Assert.False(leaks[1].MayBeCooling);
        Near.Relative(LeakDown.OilLost(2e-3, 30e5 - LeakDown.FallByCooling(1)), leaks[1].Lost, 1e-9, "lost");
        Assert.Null(leaks[2].ByCooling);
        Assert.False(leaks[2].MayBeCooling);
        Assert.Contains("not read", LeakText.Of(leaks[2], UnitSystem.Metric), StringComparison.Ordinal);
        Assert.Contains("may explain", LeakText.Of(leaks[0], UnitSystem.Metric), StringComparison.Ordinal);
    }
}
