using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;

namespace Ramwright.WebBench;

/// <summary>How long a person waits: from a keystroke to the ladder, for the first page, alone and with nineteen others; and what memory it takes.</summary>
internal static class Speed
{
    // how many edits, and how far apart in milliseconds
    private static readonly int[] WarmUp = [20, 60], Alone = [Edits, 60], Together = [EditsEach, 1000];

    private const int Edits = 1000, People = 20, EditsEach = 25;
    private const double MostMs = 100, MostFirstMs = 1000, MostMegabytes = 250;

    /// <summary>
    /// Types in a field and waits until the ladder says something else; then until that is painted. The next keystroke comes when a quick
    /// typist's would.
    /// </summary>
    private const string Typing = """
        async ([count, pause]) => {
          const field = document.getElementById('in-cylinder.bore'), ladder = document.getElementById('ladder'), out = [];
          field.focus();
          let failed = 0;
          for (let i = 0; i < count; i++) {
            const before = ladder.textContent, from = performance.now();
            field.value = (110 + (i * 7) % 31) + ' mm';
            field.dispatchEvent(new InputEvent('input', { bubbles: true }));
            const came = await new Promise(done => {
              const watch = new MutationObserver(() => { if (ladder.textContent !== before) { watch.disconnect(); done(true); } });
              watch.observe(ladder, { subtree: true, childList: true, characterData: true });
              setTimeout(() => { watch.disconnect(); done(false); }, 5000);
            });
            if (!came) failed++;
            const dom = performance.now() - from;
            await new Promise(r => requestAnimationFrame(() => setTimeout(r, 0)));
            out.push([dom, performance.now() - from]);
            await new Promise(r => setTimeout(r, pause));
          }
          return { out, failed };
        }
        """;

    public static async Task<bool> Measure()
    {
        await using Served served = await Served.Start(People);
        bool good = true;

        for (int i = 0; i < 5; i++)
            await (await served.Open("/press/wherry-yard")).CloseAsync();
        var shown = new List<double>();
        var live = new List<double>();
        for (int i = 0; i < 20; i++)
        {
            IPage page = await served.Browser.NewPageAsync();
            var watch = Stopwatch.StartNew();
            await page.GotoAsync(served.Address + "/press/wherry-yard", new PageGotoOptions { WaitUntil = WaitUntilState.DOMContentLoaded });
            await page.Locator("#ladder").WaitForAsync();
            shown.Add(watch.Elapsed.TotalMilliseconds);
            await page.Locator("[data-live]").First.WaitForAsync(new LocatorWaitForOptions { State = WaitForSelectorState.Attached });
            live.Add(watch.Elapsed.TotalMilliseconds);
            await page.CloseAsync();
        }

        Say("first page, warm server: answer seen", shown, MostFirstMs, ref good);
        Say("first page, warm server: answers to typing", live, MostFirstMs, ref good);

        IPage one = await served.Open("/press/wherry-yard");
        await one.EvaluateAsync<JsonElement>(Typing, WarmUp);
        (List<double> dom, List<double> painted, int failed) = Read(await one.EvaluateAsync<JsonElement>(Typing, Alone));
        Say($"keystroke to updated ladder, {Edits} edits", dom, MostMs, ref good);
        Say($"keystroke to painted ladder, {Edits} edits", painted, MostMs, ref good);
        await one.CloseAsync();
        double megabytes = served.Memory / 1048576.0;
        good &= megabytes < MostMegabytes && failed == 0;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"memory of the server after {Edits} edits: {megabytes:0} MB (under {MostMegabytes:0}); {failed} edits not answered"));

        IPage[] pages = await Task.WhenAll(Enumerable.Range(0, People).Select(i => served.Open($"/press/press%20{i}")));
        int errors = 0;
        foreach (IPage page in pages)
        {
            page.Console += (_, m) => Interlocked.Add(ref errors, m.Type == "error" ? 1 : 0);
            page.PageError += (_, _) => Interlocked.Increment(ref errors);
        }

        (List<double> Dom, List<double> Painted, int Failed)[] all =
            [.. (await Task.WhenAll(pages.Select(p => p.EvaluateAsync<JsonElement>(Typing, Together)))).Select(j => Read(j))];
        Say($"{People} people at once, an edit a second each, all in one browser", [.. all.SelectMany(a => a.Dom)], double.PositiveInfinity, ref good);
        errors += all.Sum(a => a.Failed);
        good &= errors == 0;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{People * EditsEach} edits, {errors} errors; memory {served.Memory / 1048576.0:0} MB"));
        return good;
    }

    private static (List<double> Dom, List<double> Painted, int Failed) Read(JsonElement json)
    {
        var dom = new List<double>();
        var painted = new List<double>();
        foreach (JsonElement pair in json.GetProperty("out").EnumerateArray())
        {
            dom.Add(pair[0].GetDouble());
            painted.Add(pair[1].GetDouble());
        }

        return (dom, painted, json.GetProperty("failed").GetInt32());
    }

    private static void Say(string what, List<double> ms, double most, ref bool good)
    {
        ms.Sort();
        double At(double share) => ms[(int)Math.Ceiling(share * ms.Count) - 1];
        good &= At(0.95) < most;
        string wanted = double.IsInfinity(most) ? "" : string.Create(CultureInfo.InvariantCulture, $" (p95 under {most:0})");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: p50 {At(0.5):0} ms, p95 {At(0.95):0} ms, worst {ms[^1]:0} ms{wanted}"));
    }
}
