using Ramwright.Jobs;

namespace Ramwright.Tests.Jobs;

public sealed class FlatDiesTest
{
    [Theory]
    [InlineData(0.1, 1, 1.0333, 1.0342)]
    [InlineData(0.2, 2, 1.1333, 1.1478)]
    [InlineData(0.2, 4, 1.2667, 1.3298)]
    [InlineData(0.3, 4, 1.4000, 1.5557)]
    [InlineData(0.4, 6, 1.8000, 2.6469)]
    public void DiscThatSlides(double μ, double d, double first, double exact)
    {
        var reference = new Reference("W2-20", "Siebel; slab method as in Dieter", Trust.FromMemoryAndRecomputed);
        reference.Within($"disc, μ {μ}, d/h {d}, first order", first, FlatDies.DiscSliding(μ, d), 0.0005);
        reference.Within($"disc, μ {μ}, d/h {d}, slab", exact, FlatDies.DiscSlidingExact(μ, d), 0.0005);
    }

    [Theory]
    [InlineData(0.1, 1, 1.05, 1.0517)]
    [InlineData(0.2, 2, 1.20, 1.2296)]
    [InlineData(0.2, 4, 1.40, 1.5319)]
    [InlineData(0.3, 4, 1.60, 1.9334)]
    [InlineData(0.4, 6, 2.20, 4.1763)]
    public void StripThatSlides(double μ, double L, double first, double exact)
    {
        var reference = new Reference("W2-21", "slab method as in Hosford and Caddell", Trust.FromMemoryAndRecomputed);
        reference.Within($"strip, μ {μ}, L/h {L}, first order", first, FlatDies.StripSliding(μ, L), 0.0005);
        reference.Within($"strip, μ {μ}, L/h {L}, slab", exact, FlatDies.StripSlidingExact(μ, L), 0.0005);
    }

    [Theory]
    [InlineData(1, 1.1925, 1.1667, 1.25)]
    [InlineData(2, 1.3849, 1.3333, 1.5)]
    [InlineData(4, 1.7698, 1.6667, 2)]
    [InlineData(8, 2.5396, 2.3333, 3)]
    public void WorkThatSticks(double size, double disc, double tresca, double strip)
    {
        var reference = new Reference("W2-22", "slab method as in Hosford and Caddell", Trust.FromMemoryAndRecomputed);
        reference.Within($"disc, d/h {size}", disc, FlatDies.DiscSticking(1, size), 0.0005);
        reference.Within($"disc, d/h {size}, Tresca", tresca, FlatDies.DiscStickingTresca(1, size), 0.0005);
        reference.Within($"strip, L/h {size}", strip, FlatDies.StripSticking(1, size), 0.0005);
    }
}
