using System.Diagnostics;
using System.Net;
using Microsoft.AspNetCore.Builder;

namespace Ramwright.Web.Tests;

/// <summary>What the server sends, and to whom.</summary>
public sealed class BenchServerTest : IAsyncLifetime, IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly HttpClient _http = new();
    private WebApplication _app = null!;

    public async Task InitializeAsync()
    {
        _folder.Copy("wherry-yard");
        _app = BenchServer.Build(_folder.Folder, 0);
        await _app.StartAsync();
        _http.BaseAddress = new Uri(BenchServer.Address(_app));
    }

    public async Task DisposeAsync() => await _app.DisposeAsync();

    public void Dispose()
    {
        _http.Dispose();
        _folder.Dispose();
    }

    [Fact]
    public void ItListensOnThisMachineAlone() => Assert.True(IPAddress.IsLoopback(IPAddress.Parse(_http.BaseAddress!.Host)));

    [Fact]
    public async Task ThePageStandsInTheFirstAnswerAndLetsNoForeignScriptRun()
    {
        HttpResponseMessage answer = await _http.GetAsync("/press/wherry-yard");
        string page = await answer.Content.ReadAsStringAsync();

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("Wherry Yard 25 t", page, StringComparison.Ordinal);
        Assert.Contains("<svg", page, StringComparison.Ordinal);
        string policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("https://", page.Replace("http://www.w3.org", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task WhatIsMadeIsHandedOutFileByFile()
    {
        HttpResponseMessage dossier = await _http.GetAsync("/press/wherry-yard/made/dossier.pdf");
        byte[] bytes = await dossier.Content.ReadAsByteArrayAsync();
        Assert.Equal("application/pdf", dossier.Content.Headers.ContentType!.MediaType);
        Assert.Equal("attachment", dossier.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Equal("%PDF-"u8.ToArray(), bytes[..5]);
        Assert.Contains("psi", await _http.GetStringAsync("/press/wherry-yard/made/gauge-chart.svg?units=imperial"), StringComparison.Ordinal);
        Assert.DoesNotContain("psi", await _http.GetStringAsync("/press/wherry-yard/made/gauge-chart.svg?units=metric"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await _http.GetAsync("/press/wherry-yard/made/no-such.pdf")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _http.GetAsync("/press/no-such/made/dossier.pdf")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _http.GetAsync("/press/wherry-yard/made/..%2Fwherry-yard.press.yaml")).StatusCode);
    }

    [Theory]
    [InlineData("sheet.html", "PROOF, once")]
    [InlineData("record.html", "no inspection by a third party")]
    [InlineData("sheet.html?units=imperial", "psi")]
    public async Task SheetAndRecordStandByThemselvesAndRunNothing(string file, string text)
    {
        HttpResponseMessage answer = await _http.GetAsync("/press/wherry-yard/" + file);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(text, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        string policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await _http.GetAsync("/press/nobody/" + file)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _http.GetAsync("/press/..%2Fwherry-yard/" + file)).StatusCode);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("127.0.0.1.evil.example")]
    public async Task AnotherHostsNameIsRefused(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/press/wherry-yard") { Headers = { Host = host } };
        Assert.Equal(HttpStatusCode.BadRequest, (await _http.SendAsync(request)).StatusCode);
    }

    [Theory]
    [InlineData("https://evil.example")]
    [InlineData("null")]
    [InlineData("http://127.0.0.1:1")]
    public async Task WhatAPageOfAnotherSiteSendsIsRefused(string origin)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/_blazor/negotiate?negotiateVersion=1");
        request.Headers.TryAddWithoutValidation("Origin", origin);
        Assert.Equal(HttpStatusCode.Forbidden, (await _http.SendAsync(request)).StatusCode);
    }

    [Fact]
    public async Task ABodyThatIsTooLongIsRefused()
    {
        using var body = new ByteArrayContent(new byte[3_000_000]);
        HttpResponseMessage? answer = null;
        try
        {
            answer = await _http.PostAsync("/_blazor/negotiate?negotiateVersion=1", body);
        }
        catch (HttpRequestException)
        {
            // hung up on while still sending: refused too
        }

        Assert.True(answer is not { IsSuccessStatusCode: true }, answer?.StatusCode.ToString());
        Assert.Contains("Wherry", await _http.GetStringAsync("/press/wherry-yard"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/bench.css")]
    [InlineData("/bench.js")]
    [InlineData("/icon.svg")]
    [InlineData("/_framework/blazor.web.js")]
    public async Task WhatThePageNeedsIsServed(string path) => Assert.Equal(HttpStatusCode.OK, (await _http.GetAsync(path)).StatusCode);

    [Theory]
    [InlineData("/press/..%2Fwherry-yard")]
    [InlineData("/press/%2Fetc%2Fpasswd")]
    [InlineData("/press/none")]
    public async Task WhatIsNotInTheFolderIsNotThere(string path)
    {
        string page = await _http.GetStringAsync(path);

        Assert.DoesNotContain("safe-to", page, StringComparison.Ordinal);
        Assert.Contains("There is no press called", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task WhatIsMadeOfAPressCanBeTakenAway()
    {
        using var zip = new System.IO.Compression.ZipArchive(await _http.GetStreamAsync("/press/wherry-yard/made/all.zip"));
        string[] names = [.. zip.Entries.Select(e => e.FullName)];
        Assert.Contains("parts.csv", names);
        Assert.Contains(names, n => n.StartsWith("nests/", StringComparison.Ordinal) && n.EndsWith(".dxf", StringComparison.Ordinal));

        string plate = names.First(n => n.StartsWith("plates/", StringComparison.Ordinal) && n.EndsWith(".dxf", StringComparison.Ordinal));
        HttpResponseMessage answer = await _http.GetAsync($"/press/wherry-yard/made/{plate}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition?.DispositionType);
        Assert.Contains("AC1009", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/press/wherry-yard/made/none.dxf"), InlineData("/press/none/made/all.zip"), InlineData("/press/wherry-yard/made/..%2F..%2Fwherry-yard.press.yaml"), InlineData("/press/..%2Fx/made/all.zip")]
    public async Task WhatIsNotMadeIsNotThere(string path) => Assert.Equal(HttpStatusCode.NotFound, (await _http.GetAsync(path)).StatusCode);

    [Theory]
    [InlineData("[[[[[[[[[[[[[[[[", 50_000)]
    [InlineData("wanted: 20 t\n", 70_000)]
    [InlineData("a: &a [x, x]\nb: *a\n", 40_000)]
    [InlineData("\u0001", 2_000_000)]
    public async Task AHostileFileIsAnsweredSoonAndTheServerServesOn(string text, int times)
    {
        await File.WriteAllTextAsync(_folder.Path("hostile"), string.Concat(Enumerable.Repeat(text, times)));
        await _http.GetStringAsync("/press/wherry-yard");       // the first page of all compiles the program
        var watch = Stopwatch.StartNew();

        string page = await _http.GetStringAsync("/press/hostile");
        TimeSpan took = watch.Elapsed;

        Assert.Contains("in the file cannot be read", page, StringComparison.Ordinal);
        Assert.Contains("Wherry Yard", await _http.GetStringAsync("/press/wherry-yard"), StringComparison.Ordinal);
        Assert.True(took < TimeSpan.FromSeconds(10), $"took {took}");       // two on a quiet machine
    }
}
