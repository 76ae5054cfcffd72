using Ramwright.Jobs;

namespace Ramwright.Squeeze;

/// <summary>
/// Heat in a row of cells, each passing to the next and losing to the air by what it shows of its skin. What one cell gives the next
/// gets, so that no heat is lost in the sum. The state of a cell is the heat in each of its kilograms above 20 °C.
/// </summary>
internal sealed class HeatChain
{
    private readonly double[] _k;
    private readonly double[] _c;
    private readonly double[] _g;
    private readonly double[] _slope;

    /// <summary>A chain whose sizes are still to be set.</summary>
    /// <param name="count">Number of cells.</param>
    /// <param name="surface">What bare skin loses.</param>
    public HeatChain(int count, HotSurface surface)
    {
        Count = count;
        Surface = surface;
        Mass = new double[count];
        IsDie = new bool[count];
        HalfBefore = new double[count];
        HalfAfter = new double[count];
        Area = new double[count];
        Contact = new double[count];
        Bare = new double[count];
        Deep = new double[count];
        Temperature = new double[count];
        _k = new double[count];
        _c = new double[count];
        _g = new double[count];
        _slope = new double[count];
        Contact.AsSpan().Fill(double.PositiveInfinity);
    }

    /// <summary>Number of cells.</summary>
    public int Count { get; }
    /// <summary>What bare skin loses.</summary>
    public HotSurface Surface { get; }
    /// <summary>Mass of each cell, kg.</summary>
    public double[] Mass { get; }
    /// <summary>Whether a cell is die steel, of constant properties.</summary>
    public bool[] IsDie { get; }
    /// <summary>From the middle of a cell to its face towards the one before, m.</summary>
    public double[] HalfBefore { get; }
    /// <summary>From the middle of a cell to its face towards the next, m.</summary>
    public double[] HalfAfter { get; }
    /// <summary>Area between a cell and the next, m²; 0 for none.</summary>
    public double[] Area { get; }
    /// <summary>Conductance between a cell and the next besides their own, W/(m²·K); infinite where they are one piece.</summary>
    public double[] Contact { get; }
    /// <summary>Bare skin of each cell, m².</summary>
    public double[] Bare { get; }
    /// <summary>How deep under its skin the mean of a cell lies, m: lowers the skin's temperature.</summary>
    public double[] Deep { get; }

    /// <summary>Temperatures at the last <see cref="Rates"/>, °C.</summary>
    public double[] Temperature { get; }
    /// <summary>Heat radiated at the last <see cref="Rates"/>, W.</summary>
    public double Radiated { get; private set; }
    /// <summary>Heat given to the air by convection, W.</summary>
    public double Convected { get; private set; }
    /// <summary>Specific heat of a cell at the last <see cref="Rates"/>, J/(kg·K).</summary>
    public double SpecificHeat(int i) => _c[i];

    /// <summary>Heat passing from a cell to the next at the last <see cref="Rates"/>, W.</summary>
    public double Passes(int i) => _g[i] * (Temperature[i] - Temperature[i + 1]);

    /// <summary>The state of a cell at a temperature.</summary>
    public double State(int i, double T) => IsDie[i] ? DieContact.DieHeat * (T - HotSteel.Coldest) : HotSteel.Enthalpy(T);

    /// <summary>Heat in all cells that are not die, J above 20 °C.</summary>
    public double InBar(ReadOnlySpan<double> e)
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
            sum += IsDie[i] ? 0 : Mass[i] * e[i];
        return sum;
    }

    /// <summary>The temperatures of a state.</summary>
    public void ReadTemperatures(ReadOnlySpan<double> e)
    {
        for (int i = 0; i < Count; i++)
        {
            if (IsDie[i])
            {
                Temperature[i] = HotSteel.Coldest + e[i] / DieContact.DieHeat;
                _k[i] = DieContact.DieConductivity;
                _c[i] = DieContact.DieHeat;
            }
            else
            {
                double T = HotSteel.At(e[i]);
                Temperature[i] = T;
                _k[i] = HotSteel.Conducts(T);
                _c[i] = HotSteel.Heat(T);
            }
        }
    }

    /// <summary>The rates of a state, J/(kg·s).</summary>
    public void Rates(ReadOnlySpan<double> e, Span<double> f)
    {
        ReadTemperatures(e);
        double radiated = 0, convected = 0, arrives = 0;
        for (int i = 0; i < Count; i++)
        {
            double leaves = 0;
            if (i + 1 < Count && Area[i] > 0)
            {
                _g[i] = Area[i] / (HalfAfter[i] / _k[i] + 1 / Contact[i] + HalfBefore[i + 1] / _k[i + 1]);
                leaves = _g[i] * (Temperature[i] - Temperature[i + 1]);
            }
            else
            {
                _g[i] = 0;
            }

            double lost = 0;
            _slope[i] = 0;
            if (Bare[i] > 0)
            {
                // the skin is colder than the cell by what must come up through the metal: one step of Newton
                double T = Temperature[i], r = Deep[i] / _k[i], slope = Surface.Slope(T);
                double skin = T - Surface.Flux(T) * r / (1 + slope * r);
                double rays = Surface.Radiates(skin), air = Surface.Flux(skin) - rays;
                radiated += rays * Bare[i];
                convected += air * Bare[i];
                lost = (rays + air) * Bare[i];
                _slope[i] = slope / (1 + slope * r) * Bare[i];
            }

            f[i] = (arrives - leaves - lost) / Mass[i];
            arrives = leaves;
        }

        Radiated = radiated;
        Convected = convected;
    }

    /// <summary>The Jacobian at the state of the last <see cref="Rates"/>: three diagonals, the change of conductivity left out.</summary>
    public void Linearise(Span<double> below, Span<double> on, Span<double> above)
    {
        for (int i = 0; i < Count; i++)
        {
            double before = i > 0 ? _g[i - 1] : 0, after = i + 1 < Count ? _g[i] : 0;
            on[i] = -(before + after + _slope[i]) / (Mass[i] * _c[i]);
            below[i] = i > 0 ? before / (Mass[i] * _c[i - 1]) : 0;
            above[i] = i + 1 < Count ? after / (Mass[i] * _c[i + 1]) : 0;
        }
    }
}
