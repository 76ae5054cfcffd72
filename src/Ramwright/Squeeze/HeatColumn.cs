using Ramwright.Jobs;

namespace Ramwright.Squeeze;

/// <summary>
/// The bar between its dies as one row of cells: lower die, bar from its underside up, upper die. All flow is through the height; the
/// sides lose to the air by what each cell shows there. The cells keep their mass as the bar is squeezed flat, and grow wider.
/// </summary>
/// <remarks>
/// The dies are a stock of cells some 60 mm deep, thick to a squeeze of a minute or two; their sides are taken as insulated.
/// The heat is that of the metal under the dies at the touch, as if all of it stayed under them.
/// </remarks>
internal sealed class HeatColumn
{
    /// <summary>Cells of each die.</summary>
    public const int DieCells = 8;
    /// <summary>Cells of the bar.</summary>
    public const int BarCells = 12;
    /// <summary>All cells.</summary>
    public const int Cells = BarCells + 2 * DieCells;

    private const double FirstDieCell = 0.6e-3, DieGrowth = 1.7, BarGrowth = 1.35;

    private static readonly double[] DieDepth = Depths();
    private static readonly double[] Share = Shares();

    private readonly double _volume;

    /// <summary>A bar at its first height.</summary>
    /// <param name="surface">What bare skin loses.</param>
    /// <param name="height">Height, m.</param>
    /// <param name="area">Plan area, m².</param>
    public HeatColumn(HotSurface surface, double height, double area)
    {
        Chain = new HeatChain(Cells, surface);
        _volume = height * area;
        for (int i = 0; i < Cells; i++)
            Chain.IsDie[i] = i is < DieCells or >= DieCells + BarCells;
        for (int i = 0; i < BarCells; i++)
            Chain.Mass[DieCells + i] = HotSteel.Density * _volume * Share[i];
        for (int i = 0; i < DieCells; i++)
        {
            int lower = DieCells - 1 - i, upper = DieCells + BarCells + i;
            Chain.HalfBefore[lower] = Chain.HalfAfter[lower] = Chain.HalfBefore[upper] = Chain.HalfAfter[upper] = DieDepth[i] / 2;
        }
    }

    /// <summary>The cells.</summary>
    public HeatChain Chain { get; }
    /// <summary>Conductance between lower die and bar, W/(m²·K); 0 where they do not touch.</summary>
    public double Below { get; set; }
    /// <summary>Conductance between bar and upper die, W/(m²·K); 0 where they do not touch.</summary>
    public double Above { get; set; }
    /// <summary>Mass of the bar under the dies, kg.</summary>
    public double Mass => HotSteel.Density * _volume;
    /// <summary>Mass share of a cell of the bar.</summary>
    public static double ShareOf(int cell) => Share[cell];

    /// <summary>Squeezes the cells to a height.</summary>
    /// <param name="h">Height, m, above zero.</param>
    /// <param name="sides">Length round the bar that is bare to the air, m.</param>
    /// <param name="across">Thickness of the bar between its bare sides, m: lowers the temperature of the sides' skin.</param>
    /// <param name="top">Share of the upper face that is bare.</param>
    /// <param name="bottom">Share of the lower face that is bare.</param>
    public void SetHeight(double h, double sides, double across = 0, double top = 0, double bottom = 0)
    {
        double A = _volume / h;
        HeatChain c = Chain;
        for (int i = 0; i < BarCells; i++)
        {
            int at = DieCells + i;
            double d = h * Share[i];
            c.HalfBefore[at] = c.HalfAfter[at] = d / 2;
            c.Area[at] = A;
            c.Bare[at] = sides * d;
            c.Deep[at] = across / 6;          // mean of a parabola below its edge
        }

        c.Bare[DieCells] += bottom * A;
        c.Bare[DieCells + BarCells - 1] += top * A;
        for (int i = 0; i < DieCells; i++)
        {
            c.Mass[DieCells - 1 - i] = c.Mass[DieCells + BarCells + i] = DieContact.DieDensity * A * DieDepth[i];
            c.Area[DieCells - 1 - i] = c.Area[DieCells + BarCells + i] = A;
        }

        int low = DieCells - 1, high = DieCells + BarCells - 1;
        (c.Area[low], c.Contact[low]) = Below > 0 ? (A, Below) : (0, 1);
        (c.Area[high], c.Contact[high]) = Above > 0 ? (A, Above) : (0, 1);
    }

    /// <summary>Sets bar and dies each to one temperature.</summary>
    public void Start(Span<double> y, double bar, double die)
    {
        for (int i = 0; i < Cells; i++)
            y[i] = Chain.State(i, Chain.IsDie[i] ? die : bar);
        Chain.ReadTemperatures(y[..Cells]);
    }

    /// <summary>Heat passing from the bar into both dies at the last rates, W.</summary>
    public double IntoDies => Chain.Passes(DieCells + BarCells - 1) - Chain.Passes(DieCells - 1);

    /// <summary>Heat in the bar above 20 °C, J.</summary>
    public double Heat(ReadOnlySpan<double> y) => Chain.InBar(y[..Cells]);

    /// <summary>Mean temperature of the bar by mass, °C.</summary>
    public static double MeanTemperature(ReadOnlySpan<double> y)
    {
        double sum = 0;
        for (int i = 0; i < BarCells; i++)
            sum += Share[i] * HotSteel.At(y[DieCells + i]);
        return sum;
    }

    /// <summary>Coldest and hottest cell of the bar, °C.</summary>
    public static (double Coldest, double Hottest) Range(ReadOnlySpan<double> y)
    {
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < BarCells; i++)
        {
            double e = y[DieCells + i];
            least = Math.Min(least, e);
            most = Math.Max(most, e);
        }

        return (HotSteel.At(least), HotSteel.At(most));
    }

    private static double[] Depths()
    {
        var d = new double[DieCells];
        for (int i = 0; i < DieCells; i++)
            d[i] = FirstDieCell * Math.Pow(DieGrowth, i);
        return d;
    }

    /// <summary>Thin cells under the skins, thick ones in the middle.</summary>
    private static double[] Shares()
    {
        var share = new double[BarCells];
        double sum = 0;
        for (int i = 0; i < BarCells; i++)
            sum += share[i] = Math.Pow(BarGrowth, Math.Min(i, BarCells - 1 - i));
        for (int i = 0; i < BarCells; i++)
            share[i] /= sum;
        return share;
    }
}
