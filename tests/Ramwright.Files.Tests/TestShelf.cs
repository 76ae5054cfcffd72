using Ramwright.Stock;

namespace Ramwright.Files.Tests;

internal static class TestShelf
{
    public static Shelf? Shelf => null;
}
