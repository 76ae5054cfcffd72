using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Ramwright.Web.Door;

namespace Ramwright.Web.Tests;

/// <summary>A bench that others may use opens to whoever shows the key, and to nobody else.</summary>
public sealed class KeyGateTest : IAsyncLifetime, IDisposable
{
    private readonly TestFolder _folder = new();
    private readonly AccessKey _key = AccessKey.New();
    private readonly HttpClientHandler _hand = new() { AllowAutoRedirect = false };
    private readonly HttpClient _http;
    private WebApplication _app = null!;

    public KeyGateTest() => _http = new HttpClient(_hand);

    public async Task InitializeAsync()
    {
        _folder.Copy("wherry-yard");
        _app = BenchServer.Build(_folder.Folder, 0, _key);
        await _app.StartAsync();
        _http.BaseAddress = new Uri(BenchServer.Address(_app));
        _http.DefaultRequestHeaders.Accept.ParseAdd("text/html");
    }

    public async Task DisposeAsync() => await _app.DisposeAsync();

    public void Dispose()
    {
        _http.Dispose();
        _hand.Dispose();
        _folder.Dispose();
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/begin")]
    [InlineData("/press/wherry-yard")]
    [InlineData("/press/wherry-yard?key=AAAA-AAAA-AAAA")]
    [InlineData("/_blazor/negotiate?negotiateVersion=1")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/press/x.css")]
    public async Task WithoutTheKeyNothingIsShown(string path)
    {
        HttpResponseMessage answer = await _http.GetAsync(path);

        Assert.Contains(answer.StatusCode, new[] { HttpStatusCode.Redirect, HttpStatusCode.Unauthorized });
        Assert.DoesNotContain("Wherry", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheKeyInTheAddressLetsInAndIsTakenOutOfIt()
    {
        HttpResponseMessage answer = await _http.GetAsync("/press/wherry-yard?key=" + _key.Text);
        Assert.Equal("/press/wherry-yard", answer.Headers.Location!.ToString());
        string cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(_key.Text, cookie, StringComparison.Ordinal);

        Assert.Contains("Wherry Yard", await _http.GetStringAsync("/press/wherry-yard"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TheFormTakesTheKeyFromItsOwnPageOnly()
    {
        string form = await _http.GetStringAsync("/key");
        Match token = Regex.Match(form, "name=\"(__[^\"]+)\" value=\"([^\"]+)\"");
        FormUrlEncodedContent Said(string key, bool own) =>
            new([new("key", key), .. own ? new[] { new KeyValuePair<string, string>(token.Groups[1].Value, token.Groups[2].Value) } : []]);

        Assert.Equal(HttpStatusCode.BadRequest, (await _http.PostAsync("/key", Said(_key.Text, own: false))).StatusCode);
        Assert.Equal("/key?wrong=yes", (await _http.PostAsync("/key", Said("AAAA", own: true))).Headers.Location!.ToString());
        Assert.Equal("/", (await _http.PostAsync("/key", Said(_key.Text.ToLowerInvariant().Replace('-', ' '), own: true))).Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.OK, (await _http.GetAsync("/")).StatusCode);
    }

    [Fact]
    public async Task WrongKeysAreThoughtAboutOneAtATime()
    {
        var watch = Stopwatch.StartNew();
        await Task.WhenAll(Enumerable.Range(0, 3).Select(i => _http.GetAsync($"/?key=WRNG-WRNG-WRN{i}")));

        Assert.True(watch.Elapsed > TimeSpan.FromSeconds(2.9), $"three took {watch.Elapsed}");
    }

    [Fact]
    public void NoTwoKeysAreAlikeAndNoneIsShort()
    {
        string[] keys = [.. Enumerable.Range(0, 200).Select(_ => AccessKey.New().Text)];

        Assert.Equal(200, keys.Distinct().Count());
        Assert.All(keys, k => Assert.Matches("^[A-HJ-NP-Z2-9]{4}(-[A-HJ-NP-Z2-9]{4}){2}$", k));
    }
}
