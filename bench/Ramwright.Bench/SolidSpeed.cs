using System.Diagnostics;
using System.Globalization;
using System.Text;
using Ramwright.Geometry;
using Ramwright.Solids;

namespace Ramwright.Bench;

/// <summary>One newton in a closed frame of I sections, whole and held by nothing, on ever finer grids; beside CalculiX on the same grids as far as it is let.</summary>
internal static class SolidSpeed
{
    private static readonly int[] Sizes = [30_000, 100_000, 300_000, 1_000_000];

    private sealed record Row(int Unknowns, double Wall, double Cpu, double Megabytes, int Turns, double Opening, CalculixRun? Calculix);

    private sealed record CalculixRun(double Wall, double Cpu, double Megabytes, double Opening);

    /// <summary>Runs and prints; writes docs/solids-speed.md where it is asked to.</summary>
    /// <param name="calculix">Largest grid that CalculiX is given, unknowns.</param>
    /// <param name="write">Whether to write the page.</param>
    public static int Run(int calculix, bool write)
    {
        Solve(Mesh(0.04));          // warm: what is hot is compiled
        var rows = new List<Row>();
        foreach (int size in Sizes)
        {
            double cell = CellFor(size);
            GC.Collect();
            (double wall, double cpu, SolidSolution solution, double opening) = Timed(cell);
            double peak = Process.GetCurrentProcess().PeakWorkingSet64 / 1e6;
            var row = new Row(solution.Mesh.Unknowns, wall, cpu, peak, solution.Convergence.Iterations, opening, null);
            if (row.Unknowns <= calculix * 1.1)
                row = row with { Calculix = ByCalculix(solution.Mesh) };
            rows.Add(row);
            Console.WriteLine(Line(row));
        }

        string text = Page(rows);
        Console.WriteLine(text);
        if (write)
            File.WriteAllText(Path.Combine(Repository.Find("docs"), "solids-speed.md"), text);
        return 0;
    }

    private static double CellFor(int unknowns)
    {
        (double low, double high) = (0.003, 0.05);
        for (int i = 0; i < 14; i++)
        {
            double middle = Math.Sqrt(low * high);
            (low, high) = Mesh(middle).Unknowns > unknowns ? (middle, high) : (low, middle);
        }

        return high;
    }

    private static (double, double, SolidSolution, double) Timed(double cell)
    {
        TimeSpan cpu = Process.GetCurrentProcess().TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        (SolidSolution solution, double opening) = Solve(Mesh(cell));
        return (watch.Elapsed.TotalSeconds, (Process.GetCurrentProcess().TotalProcessorTime - cpu).TotalSeconds, solution, opening);
    }

    private static readonly Cuboid Die = Cuboid.Everywhere with { X0 = -0.04, X1 = 0.04, Y0 = -0.00475, Y1 = 0.00475 };
    private const double Width = 0.64, Height = 1.2, Beam = 0.22, Post = 0.16;

    private static SolidMesh Mesh(double cell)
    {
        double axis = (Width + Post) / 2;
        static IReadOnlyList<Cuboid> I(double h, double b, double tw, double tf, Func<double, double, double, double, Cuboid> place) =>
            [place(-tw / 2, tw / 2, -h / 2 + tf, h / 2 - tf), place(-b / 2, b / 2, h / 2 - tf, h / 2), place(-b / 2, b / 2, -h / 2, -h / 2 + tf)];
        IReadOnlyList<Cuboid> Lying(double z) => I(Beam, 0.22, 0.0095, 0.016, (y0, y1, z0, z1) => new Cuboid(-Width / 2, Width / 2, y0, y1, z + z0, z + z1));
        IReadOnlyList<Cuboid> Standing(double x) => I(Post, 0.16, 0.008, 0.013, (y0, y1, z0, z1) => new Cuboid(x + z0, x + z1, y0, y1, -Beam / 2, Height + Beam / 2));
        SolidPart[] parts = [new("crown", Lying(Height)), new("bed", Lying(0)), new("right upright", Standing(axis)), new("left upright", Standing(-axis))];
        Bond[] bonds = [new(0, 2, Cuboid.Everywhere), new(0, 3, Cuboid.Everywhere), new(1, 2, Cuboid.Everywhere), new(1, 3, Cuboid.Everywhere)];
        return SolidMesh.Of(parts, bonds, new CellSizes(cell, 1.5 * cell), [Die]);
    }

    private static (Dictionary<int, double> Upper, Dictionary<int, double> Lower, Dictionary<int, Vector> Forces) Load(SolidMesh mesh)
    {
        Dictionary<int, double> upper = mesh.Face(0, 2, Height - Beam / 2, Die), lower = mesh.Face(1, 2, Beam / 2, Die);
        double over = upper.Values.Sum(), under = lower.Values.Sum();
        return (upper, lower, upper.Select(s => (s.Key, s.Value / over)).Concat(lower.Select(s => (s.Key, -s.Value / under))).ToDictionary(s => s.Key, s => s.Item2 * Vector.Up));
    }

    private static (SolidSolution Solution, double Opening) Solve(SolidMesh mesh)
    {
        var solver = new SolidSolver(mesh);
        (Dictionary<int, double> upper, Dictionary<int, double> lower, Dictionary<int, Vector> forces) = Load(mesh);
        SolidSolution solution = solver.Solve(forces);
        return (solution, solution.Mean(upper).Z - solution.Mean(lower).Z);
    }

    private static CalculixRun? ByCalculix(SolidMesh mesh)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("solid");
        try
        {
            (Dictionary<int, double> upper, Dictionary<int, double> lower, Dictionary<int, Vector> forces) = Load(mesh);
            File.WriteAllText(Path.Combine(folder.FullName, "frame.inp"), Deck(mesh, forces, [.. upper.Keys, .. lower.Keys]));
            var start = new ProcessStartInfo("ccx", "frame") { RedirectStandardOutput = true, WorkingDirectory = folder.FullName };
            start.Environment["OMP_NUM_THREADS"] = Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture);
            var watch = Stopwatch.StartNew();
            using Process process = Process.Start(start)!;
            long peak = 0;
            Task<string> said = process.StandardOutput.ReadToEndAsync();
            TimeSpan cpu = default;
            while (!process.WaitForExit(50))
            {
                process.Refresh();
                try { (peak, cpu) = (Math.Max(peak, process.PeakWorkingSet64), process.TotalProcessorTime); }
                catch (InvalidOperationException) { break; }
            }

            process.WaitForExit();
            double wall = watch.Elapsed.TotalSeconds;
            if (!said.Result.Contains("Job finished", StringComparison.Ordinal))
                return null;
            Dictionary<int, double> up = [];
            foreach (string line in File.ReadLines(Path.Combine(folder.FullName, "frame.dat")))
                if (line.Split(' ', StringSplitOptions.RemoveEmptyEntries) is [var n, _, _, var z] && int.TryParse(n, out int node))
                    up[node - 1] = double.Parse(z, CultureInfo.InvariantCulture) * 1e-3;
            double Mean(Dictionary<int, double> share) => share.Sum(s => s.Value * up[s.Key]) / share.Values.Sum();
            return new CalculixRun(wall, cpu.TotalSeconds, peak / 1e6, Mean(upper) - Mean(lower));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Deck(SolidMesh mesh, Dictionary<int, Vector> forces, int[] asked)
    {
        var deck = new StringBuilder();
        void Line(FormattableString text) => deck.Append(text.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"*NODE, NSET=ALL");
        for (int i = 0; i < mesh.NodeCount; i++)
            Line($"{i + 1}, {mesh.At(i).X * 1e3:F9}, {mesh.At(i).Y * 1e3:F9}, {mesh.At(i).Z * 1e3:F9}");
        Line($"*ELEMENT, TYPE=C3D8I, ELSET=STEEL");
        for (int c = 0; c < mesh.CellCount; c++)
        {
            ReadOnlySpan<int> n = mesh.NodesOf(c);
            Line($"{c + 1}, {n[0] + 1}, {n[1] + 1}, {n[3] + 1}, {n[2] + 1}, {n[4] + 1}, {n[5] + 1}, {n[7] + 1}, {n[6] + 1}");
        }

        Line($"*MATERIAL, NAME=STEEL");
        Line($"*ELASTIC");
        Line($"210000., 0.3");
        Line($"*SOLID SECTION, ELSET=STEEL, MATERIAL=STEEL");
        // three nodes far from each other, held as a tripod is: no force goes through them
        int a = 0, b = Farthest(mesh, a, -1), c3 = Farthest(mesh, a, b);
        Line($"*BOUNDARY");
        Line($"{a + 1}, 1, 3");
        Vector along = mesh.At(b) - mesh.At(a);
        int axis = Math.Abs(along.Z) > Math.Abs(along.X) ? 2 : 0;
        Line($"{b + 1}, {2 - axis + 1}, {2 - axis + 1}");
        Line($"{b + 1}, 2, 2");
        Line($"{c3 + 1}, 2, 2");
        Line($"*STEP");
        Line($"*STATIC");
        Line($"*CLOAD");
        foreach ((int node, Vector f) in forces)
            Line($"{node + 1}, 3, {f.Z:E12}");
        Line($"*NSET, NSET=ASKED");
        foreach (int n in asked)
            Line($"{n + 1},");
        Line($"*NODE PRINT, NSET=ASKED");
        Line($"U");
        Line($"*END STEP");
        return deck.ToString();
    }

    // farthest from one node, or from the line through two
    private static int Farthest(SolidMesh mesh, int a, int b)
    {
        double Far(int i) => b < 0 ? (mesh.At(i) - mesh.At(a)).Length : (mesh.At(i) - mesh.At(a)).Cross((mesh.At(b) - mesh.At(a)).Unit).Length;
        return Enumerable.Range(0, mesh.NodeCount).MaxBy(Far);
    }

    private static string Line(Row r) => string.Create(CultureInfo.InvariantCulture,
        $"| {r.Unknowns:N0} | {r.Wall:F2} | {r.Cpu:F2} | {r.Megabytes:F0} | {r.Turns} | {r.Opening * 1e9:F5} | ")
        + (r.Calculix is { } c ? string.Create(CultureInfo.InvariantCulture, $"{c.Wall:F1} | {c.Cpu:F1} | {c.Megabytes:F0} | {c.Opening * 1e9:F5} | {c.Wall / r.Wall:F0} |") : " | | | | |");

    private static string Page(List<Row> rows)
    {
        // slope of the straight line through the logarithms
        double[] x = [.. rows.Select(r => Math.Log(r.Unknowns))], y = [.. rows.Select(r => Math.Log(r.Cpu))];
        double mx = x.Average(), my = y.Average(), slope = x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
        string cores = Environment.ProcessorCount.ToString(CultureInfo.InvariantCulture);
        return $"""
            # How fast solids are solved

            A closed frame of I sections (C-06 of [solids.md](solids.md)), whole and held by nothing, under one newton at the ram: cutting into cells, building the hierarchy and iterating
            to an error of 1e-5 in energy, everything included, after one small run that warms the runtime. Beside it CalculiX (bricks C3D8I, its own direct solver) on the same
            grid in the same run, reading and writing files included, as far as it was let. Written by
            `dotnet run -c Release --project bench/Ramwright.Bench -- solids`; {cores} cores{Busy()}.

            | unknowns | s | s of the processor | MB, greatest yet | turns | opening, nm/N | CalculiX: s | s of the processor | MB | opening, nm/N | times as long |
            |---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|
            {string.Join('\n', rows.Select(Line))}

            Processor time grows with the unknowns to the power {slope.ToString("F2", CultureInfo.InvariantCulture)}.

            """.ReplaceLineEndings("\n");
    }

    // what else the machine does falls on wall time, not on processor time
    private static string Busy()
    {
        try
        {
            string load = File.ReadAllText("/proc/loadavg").Split(' ')[0];
            return $", load {load} at the end of the run; wall time counts what else the machine did, processor time hardly does";
        }
        catch (IOException)
        {
            return "";
        }
    }
}
