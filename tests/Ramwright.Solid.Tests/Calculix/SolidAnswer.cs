using System.Globalization;
using Ramwright.Geometry;
using Ramwright.Solid.Tests.Bricks;
using Ramwright.Solids;

namespace Ramwright.Solid.Tests.Calculix;

/// <summary>What CalculiX found, or the engine's own solver on the same bricks. SI.</summary>
public sealed class SolidAnswer
{
    private readonly SolidModel _model;
    private readonly Dictionary<int, Vector> _moved = [];
    private readonly Dictionary<(int Brick, int Point), double[]> _stress = [];

    private SolidAnswer(SolidModel model) => _model = model;

    /// <summary>All that the supports give back, N.</summary>
    public Vector Reaction { get; private set; }

    /// <summary>Displacement of a node, m.</summary>
    public Vector Displacement(int node) => _moved[node];

    /// <summary>Mean displacement of a face, each node by its share.</summary>
    public Vector Mean(Dictionary<int, double> share)
    {
        double all = share.Values.Sum();
        return share.Aggregate(Vector.Zero, (sum, s) => sum + s.Value / all * _moved[s.Key]);
    }

    /// <summary>How much a face turns, rad: the slope of the straight line that fits its rise along an axis best.</summary>
    public double Slope(Dictionary<int, double> share, int axis)
    {
        double Along(int node) => axis == 0 ? _model.Mesh.Places[node].X : _model.Mesh.Places[node].Y;
        double all = share.Values.Sum(), middle = share.Sum(s => s.Value * Along(s.Key)) / all, rise = Mean(share).Z;
        return share.Sum(s => s.Value * (Along(s.Key) - middle) * (_moved[s.Key].Z - rise)) / share.Sum(s => s.Value * Math.Pow(Along(s.Key) - middle, 2));
    }

    /// <summary>How much a face turns about X, rad, where its middle plane stays down.</summary>
    public double Roll(Dictionary<int, double> share)
    {
        double Y(int node) => _model.Mesh.Places[node].Y;
        return share.Sum(s => s.Value * Y(s.Key) * _moved[s.Key].Z) / share.Sum(s => s.Value * Y(s.Key) * Y(s.Key));
    }

    /// <summary>How much a cross-section of an arm tilts, rad: the slope of the straight line that fits its forward movement over the height best.</summary>
    public double Tilt(Dictionary<int, double> share)
    {
        double Up(int node) => _model.Mesh.Places[node].Z;
        double all = share.Values.Sum(), middle = share.Sum(s => s.Value * Up(s.Key)) / all, mean = Mean(share).Y;
        return share.Sum(s => s.Value * (Up(s.Key) - middle) * (_moved[s.Key].Y - mean)) / share.Sum(s => s.Value * Math.Pow(Up(s.Key) - middle, 2));
    }

    /// <summary>Force and moment through a cut, N and N·m: ∫σ dA and ∫σ (s − s0) dA, s along another axis; and where the cut lies, m.</summary>
    public (double N, double M, double At) Through(Cut cut, int across, double centroid)
    {
        double N = 0, M = 0, at = 0;
        foreach (int i in cut.Bricks(_model.Mesh))
        {
            Cuboid b = _model.Mesh.Bricks[i].Box;
            at = (b.From(cut.Axis) + b.To(cut.Axis)) / 2;
            double volume = (b.X1 - b.X0) * (b.Y1 - b.Y0) * (b.Z1 - b.Z0), area = volume / (b.To(cut.Axis) - b.From(cut.Axis));
            for (int p = 0; p < 8; p++)             // an eighth of the brick to each point; the pair along the cut's axis is averaged
            {
                double sign = (p >> across & 1) == 0 ? -1 : 1;
                double s = (b.From(across) + b.To(across)) / 2 + sign * (b.To(across) - b.From(across)) / (2 * Math.Sqrt(3));
                double f = _stress[(i, p)][cut.Axis] * area / 8;
                N += f;
                M += f * (s - centroid);
            }
        }

        return (N, M, at);
    }

    /// <summary>By the engine's own solver; bricks of eight nodes only.</summary>
    public static SolidAnswer Own(SolidModel model)
    {
        ArgumentOutOfRangeException.ThrowIfEqual(model.Middles, true);
        var supports = new Supports();
        foreach ((int node, int direction) in model.Held)
            supports.Hold(node, direction);
        SolidSolution solution = new SolidSolver(model.Mesh.Mesh, supports).Solve(model.Forces);
        var answer = new SolidAnswer(model) { Reaction = solution.Reaction, Convergence = solution.Convergence };
        for (int i = 0; i < model.Mesh.Mesh.NodeCount; i++)
            answer._moved[i] = solution.Displacement(i);
        double g = 1 / Math.Sqrt(3);
        foreach (int brick in model.Cuts.SelectMany(c => c.Bricks(model.Mesh)).Distinct())
            for (int p = 0; p < 8; p++)
            {
                StressState s = solution.Stress(brick, (p & 1) == 0 ? -g : g, (p & 2) == 0 ? -g : g, (p & 4) == 0 ? -g : g);
                answer._stress[(brick, p)] = [s.XX, s.YY, s.ZZ, s.XY, s.XZ, s.YZ];
            }

        return answer;
    }

    /// <summary>What the iteration came to, where it was the engine's own.</summary>
    public Convergence? Convergence { get; private init; }

    /// <summary>Reads a results file: displacements, total reaction, stresses at the points of integration (x runs fastest).</summary>
    public static SolidAnswer Read(SolidModel model, IEnumerable<string> lines)
    {
        var answer = new SolidAnswer(model);
        string reading = "";
        foreach (string line in lines)
        {
            string[] words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (words.Length == 0)
                continue;
            if (!char.IsAsciiDigit(words[0][0]) && words[0][0] != '-')
            {
                reading = line.Contains("displacements", StringComparison.Ordinal) ? "displacements"
                    : line.Contains("total force", StringComparison.Ordinal) ? "reaction"
                    : line.Contains("stresses", StringComparison.Ordinal) ? "stresses" : "";
                continue;
            }

            double[] values = [.. words.Select(w => double.Parse(w, CultureInfo.InvariantCulture))];
            switch (reading)
            {
                case "displacements":
                    answer._moved[(int)values[0] - 1] = new Vector(values[1], values[2], values[3]) * 1e-3;
                    break;
                case "reaction":
                    answer.Reaction = new Vector(values[0], values[1], values[2]);
                    break;
                case "stresses":
                    answer._stress[((int)values[0] - 1, (int)values[1] - 1)] = [.. values[2..].Select(s => s * 1e6)];
                    break;
            }
        }

        return answer._moved.Count > 0 ? answer : throw new InvalidOperationException("CalculiX wrote no displacements");
    }
}
