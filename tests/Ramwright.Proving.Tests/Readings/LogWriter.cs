using System.Globalization;
using Ramwright.Files.Readings;

namespace Ramwright.Tests.Readings;

/// <summary>
/// This assembly started as a program: it adds readings to a log without end and says after each that it is written, to be killed while it does.
/// </summary>
internal static class LogWriter
{
    private static void Main(string[] args)
    {
        if (args is not [var log, var who])
            return;
        for (int i = 0; ; i++)
        {
            string step = i.ToString(CultureInfo.InvariantCulture);
            ReadingLog.Append(log, $"2026-05-09 {who} top-pressure 205 bar step={step} note=\"{new string('x', i % 300)} °C\"");
            Console.Out.Write($"{who} {step}.\n");
            Console.Out.Flush();
        }
    }
}
