using System.Text.Json;
using Json.Schema;
using Ramwright.Files.Binding;
using Ramwright.Presses;

namespace Ramwright.Files.Tests;

public sealed class PressSchemaTest
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(PressSchema.Generate());

    [Fact]
    public void TheOneInTheRepositoryIsCurrent() =>
        Approved.Matches(PressSchema.Generate(), TestFiles.InHouse("schema", "press.schema.json"));

    [Fact]
    public void IsItselfAValidSchema()
    {
        using JsonDocument document = JsonDocument.Parse(PressSchema.Generate());
        Assert.True(MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public void AcceptsTheStartersAndAllTheirVariants()
    {
        foreach (string kind in Starter.Kinds)
        {
            foreach (string text in StarterTest.Variants(Starter.Text(kind)).Prepend(Starter.Text(kind)))
                Assert.True(IsValid(text), text);
        }
    }

    [Fact]
    public void AcceptsTheExamples()
    {
        string folder = TestFiles.InHouse("examples");
        foreach (string file in Directory.Exists(folder) ? Directory.GetFiles(folder, "*" + PressFile.Ending) : [])
            Assert.True(IsValid(File.ReadAllText(file)), file);
    }

    [Theory]
    [InlineData("unknown-key")]
    [InlineData("unknown-key-at-top")]
    [InlineData("key-of-another-kind")]
    [InlineData("key-of-another-place")]
    [InlineData("key-with-nothing-near")]
    [InlineData("missing-keys")]
    [InlineData("missing-kind")]
    [InlineData("unknown-kind")]
    [InlineData("kind-where-there-is-none")]
    [InlineData("value-left-empty")]
    [InlineData("record-left-empty")]
    [InlineData("text-where-keys-belong")]
    [InlineData("keys-where-a-list-belongs")]
    [InlineData("list-where-keys-belong")]
    [InlineData("keys-where-a-value-belongs")]
    [InlineData("list-of-the-wrong-things")]
    [InlineData("whole-file-a-list")]
    [InlineData("whole-file-a-text")]
    [InlineData("no-unit")]
    [InlineData("comma-inside-braces")]
    [InlineData("not-a-number")]
    [InlineData("out-of-bounds")]
    [InlineData("half-a-bolt")]
    [InlineData("unknown-word")]
    [InlineData("merge-key")]
    [InlineData("empty")]
    public void RefusesWhatTheReaderRefuses(string name) =>
        Assert.False(IsValid(File.ReadAllText(TestFiles.Of("Bad", name + PressFile.Ending))), name);

    private static bool IsValid(string yaml)
    {
        using JsonDocument document = JsonDocument.Parse(YamlAsJson.Of(yaml)?.ToJsonString() ?? "null");
        return Schema.Evaluate(document.RootElement).IsValid;
    }

    [Fact]
    public void EveryKindOfARecordIsNamedOnIt()
    {
        foreach (Type type in typeof(Press).Assembly.GetTypes().Where(t => t.IsAbstract && t.GetCustomAttributes(typeof(SaysAttribute), false).Length > 0))
        {
            Type[] kinds = [.. type.Assembly.GetTypes().Where(t => t.BaseType == type)];
            Assert.Equal(kinds.OrderBy(t => t.Name), RecordShape.Of(type).Kinds.Select(k => k.Type).OrderBy(t => t.Name));
            Assert.NotEmpty(kinds);
        }
    }
}
