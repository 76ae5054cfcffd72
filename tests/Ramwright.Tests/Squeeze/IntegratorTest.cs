using Ramwright.Squeeze;

namespace Ramwright.Tests.Squeeze;

/// <summary>The stiff method against closed forms, a known stiff problem and its own order.</summary>
public class IntegratorTest
{
    /// <summary>Any small system, its Jacobian by differences, solved by elimination; or a Jacobian of nothing.</summary>
    private sealed class Dense(int n, Action<double[], double[]> rates, bool withJacobian = true, double small = 1e-12) : StiffSystem
    {
        private readonly double[,] _j = new double[n, n];
        private double[,] _lu = new double[n, n];

        public override int Size => n;

        public override void Rates(ReadOnlySpan<double> y, Span<double> f)
        {
            var to = new double[n];
            rates(y.ToArray(), to);
            to.CopyTo(f);
        }

        public override void Linearise(ReadOnlySpan<double> y, ReadOnlySpan<double> f)
        {
            if (!withJacobian)
                return;
            double[] moved = y.ToArray(), to = new double[n];
            for (int k = 0; k < n; k++)
            {
                double d = 1e-7 * Math.Max(1e-5, Math.Abs(y[k]));
                moved[k] = y[k] + d;
                rates(moved, to);
                moved[k] = y[k];
                for (int i = 0; i < n; i++)
                    _j[i, k] = (to[i] - f[i]) / d;
            }
        }

        public override void Factor(double a)
        {
            _lu = new double[n, n];
            for (int i = 0; i < n; i++)
            {
                for (int k = 0; k < n; k++)
                    _lu[i, k] = (i == k ? a : 0) - _j[i, k];
            }
        }

        public override void Solve(Span<double> x)
        {
            var m = (double[,])_lu.Clone();
            for (int p = 0; p < n; p++)
            {
                int best = p;
                for (int i = p + 1; i < n; i++)
                    best = Math.Abs(m[i, p]) > Math.Abs(m[best, p]) ? i : best;
                (x[p], x[best]) = (x[best], x[p]);
                for (int k = 0; k < n; k++)
                    (m[p, k], m[best, k]) = (m[best, k], m[p, k]);
                for (int i = p + 1; i < n; i++)
                {
                    double f = m[i, p] / m[p, p];
                    for (int k = p; k < n; k++)
                        m[i, k] -= f * m[p, k];
                    x[i] -= f * x[p];
                }
            }

            for (int p = n - 1; p >= 0; p--)
            {
                for (int k = p + 1; k < n; k++)
                    x[p] -= m[p, k] * x[k];
                x[p] /= m[p, p];
            }
        }

        public override double Small(int i) => small;
    }

    private sealed class Crosses(int which, double at) : IEvents
    {
        public int Count => 1;
        public double Value(int i, ReadOnlySpan<double> y) => y[which] - at;
    }

    // A pendulum: not linear, with a conserved sum.
    private static void Pendulum(double[] y, double[] f) => (f[0], f[1]) = (y[1], -Math.Sin(y[0]));

    private static double Error(bool withJacobian, int steps)
    {
        var method = new Rosenbrock(new Dense(2, Pendulum, withJacobian), 1);
        double[] y = [1.2, 0.3], next = new double[2];
        for (int i = 0; i < steps; i++)
        {
            method.From(y);
            method.Step(y, 2.0 / steps, next);
            next.CopyTo(y, 0);
        }

        double[] reference = [1.2, 0.3];
        var fine = new MathNet.Numerics.LinearAlgebra.Vector<double>[1];
        fine = MathNet.Numerics.OdeSolvers.RungeKutta.FourthOrder(
            MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(reference), 0, 2, 20_001,
            (_, v) => MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense([v[1], -Math.Sin(v[0])]));
        return Math.Abs(fine[^1][0] - y[0]) + Math.Abs(fine[^1][1] - y[1]);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]       // a W method: the order does not lean on the Jacobian
    public void IsOfOrderThree(bool withJacobian)
    {
        double order = Math.Log2(Error(withJacobian, 40) / Error(withJacobian, 80));

        Assert.InRange(order, 2.7, 4.2);
    }

    [Fact]
    public void FollowsAStiffOneWithLongSteps()
    {
        // y' = −10⁶ (y − cos t) − sin t, whose answer is cos t whatever the speed of its falling back
        var system = new Dense(2, (y, f) => (f[0], f[1]) = (-1e6 * (y[0] - Math.Cos(y[1])) - Math.Sin(y[1]), 1));
        double[] y = [1, 0];
        double t = 0, first = 1e-6;
        var stepper = new TimeStepper(system, 1e-5);

        stepper.Run(y, ref t, 3, ref first, 1, null, null);

        Near.Absolute(Math.Cos(3), y[0], 1e-5, "at 3 s");
        Assert.True(stepper.Tried < 300, $"{stepper.Tried} steps");
    }

    [Fact]
    public void RobertsonsReaction()
    {
        var row = new Reference("Robertson", "Hairer and Wanner, Solving ODEs II, IV.10: ROBER at t = 40 (MathWorks and SUNDIALS print the same)", Trust.FromMemoryAndRecomputed);
        var system = new Dense(3, (y, f) =>
        {
            double a = 0.04 * y[0], b = 1e4 * y[1] * y[2], c = 3e7 * y[1] * y[1];
            (f[0], f[1], f[2]) = (-a + b, a - b - c, c);
        }, small: 1e-14);
        double[] y = [1, 0, 0];
        double t = 0, first = 1e-6;

        new TimeStepper(system, 1e-7).Run(y, ref t, 40, ref first, 10, null, null);

        row.Near("y1", 0.7158271, y[0], 1e-5);
        row.Near("y2", 9.185535e-6, y[1], 1e-5);
        row.Near("y3", 0.2841637, y[2], 1e-5);
    }

    [Fact]
    public void FindsTheMoment()
    {
        // fall of a stone from 1 m
        var system = new Dense(2, (y, f) => (f[0], f[1]) = (y[1], 9.80665));
        double[] y = [0, 0];
        double t = 0, first = 0.01;

        int hit = new TimeStepper(system, 1e-8).Run(y, ref t, 10, ref first, 1, new Crosses(0, 1), null);

        Assert.Equal(0, hit);
        Near.Relative(Math.Sqrt(2 / 9.80665), t, 1e-8, "s to fall a metre");
        Near.Absolute(1, y[0], 1e-9, "m");
    }

    [Fact]
    public void WhatCannotBeFollowedIsRefused()
    {
        var system = new Dense(1, (y, f) => f[0] = y[0] * y[0]);       // runs away at t = 1
        double[] y = [1];
        double t = 0, first = 0.01;

        Assert.Throws<InvalidOperationException>(() => new TimeStepper(system, 1e-6).Run(y, ref t, 2, ref first, 1, null, null));
    }
}
