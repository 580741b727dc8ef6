using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.Json;
using System.Text.RegularExpressions;
using Json.Schema;
using RigScenarios.Files;
using RigScenarios.Fits.Notes;
using RigScenarios.Scenarios;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace RigScenarios.Tests.Files;

public sealed partial class JsonSchemaTests
{
    private static readonly JsonSchema Scenario = JsonSchema.FromText(ScenarioFile.JsonSchema);

    private static readonly JsonSchema Parts = JsonSchema.FromText(PartsFile.JsonSchema);

    private static readonly JsonSchema FieldNotes = JsonSchema.FromText(FieldNotesFile.JsonSchema);

    [Fact]
    public void The_published_scenario_schema_is_the_one_that_the_reader_uses() =>
        IsPublished("scenario.schema.json", ScenarioFile.JsonSchema);

    [Fact]
    public void The_published_parts_schema_is_the_one_that_the_reader_uses() =>
        IsPublished("parts.schema.json", PartsFile.JsonSchema);

    [Fact]
    public void The_published_schema_of_field_notes_is_the_one_that_the_reader_uses() =>
        IsPublished("field-notes.schema.json", FieldNotesFile.JsonSchema);

    [Fact]
    public void Every_data_file_fits_its_schema()
    {
        foreach (var file in Repository.FieldNotesFiles)
            Assert.True(Fits(FieldNotes, File.ReadAllText(file)), file);
        foreach (var file in Repository.ScenarioFiles)
            Assert.True(Fits(Scenario, File.ReadAllText(file)), file);
        foreach (var file in Repository.PartsFiles)
            Assert.True(Fits(Parts, File.ReadAllText(file)), file);
        Assert.True(Fits(Scenario, SmallScenario.Text()));
    }

    [Fact]
    public void What_the_writer_writes_fits_the_schema()
    {
        foreach (var file in Repository.ScenarioFiles)
            Assert.True(Fits(Scenario, ScenarioFile.Text(ScenarioFile.Read(file))), file);
    }

    [Theory]
    [InlineData("title: By hand", "titel: By hand")]
    [InlineData("energy: 100 Wh", "energy: 100")]
    [InlineData("energy: 100 Wh", "energy: 100,5 Wh")]
    [InlineData("stance: hand", "stance: head")]
    [InlineData("count: 3", "count: 3.5")]
    [InlineData("count: 3", "count: many")]
    [InlineData("essential: yes", "essential: perhaps")]
    [InlineData("rigscenarios: scenario 1", "rigscenarios: scenario 2")]
    [InlineData("length: 2 h", "length: 2")]
    [InlineData("kit: {flat", "kit: {Big Flat: {part: flat}, flat")]
    [InlineData("item: flat", "thing: flat")]
    [InlineData("resistance-floor: 0,", "resistance-floor: 1.5,")]
    [InlineData("heat-conductance: 0.5 W/K", "heat-conductance: 0.5 W")]
    public void What_the_reader_refuses_the_schema_refuses(string right, string wrong)
    {
        var text = SmallScenario.Text();
        Assert.Contains(right, text, StringComparison.Ordinal);
        var changed = text.Replace(right, wrong, StringComparison.Ordinal);
        Assert.False(Fits(Scenario, changed));
        Assert.Throws<ScenarioProblemsException>(() => SmallScenario.Read(changed));
    }

    [Fact]
    public void Every_field_tells_an_editor_what_it_is()
    {
        foreach (var text in (string[])[ScenarioFile.JsonSchema, PartsFile.JsonSchema, FieldNotesFile.JsonSchema])
            Describes(JsonNode.Parse(text)!, "");
    }

    private static void Describes(JsonNode node, string at)
    {
        if (node["properties"] is JsonObject properties)
        {
            foreach (var (name, field) in properties)
            {
                Assert.False(string.IsNullOrWhiteSpace((string?)field!["description"]), $"{at}.{name} has no description.");
                Describes(field, $"{at}.{name}");
            }
        }
        if (node["additionalProperties"] is JsonObject each)
            Describes(each, at + ".*");
        if (node["items"] is JsonObject item)
            Describes(item, at + "[]");
    }

    private static void IsPublished(string name, string schema)
    {
        var path = Path.Combine(Repository.Root, "docs", "schema", name);
        if (Accepting.IsWanted)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, schema);
        }
        Assert.True(File.Exists(path) && File.ReadAllText(path) == schema,
            $"docs/schema/{name} is not the schema of the reader any more. Renew it: run these tests once with "
                + $"{Accepting.Variable}=1 in the environment, and commit the file.");
    }

    private static bool Fits(JsonSchema schema, string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        using var json = JsonDocument.Parse(ToJson(stream.Documents[0].RootNode)!.ToJsonString());
        return schema.Evaluate(json.RootElement).IsValid;
    }

    /// <summary>Scalars by the core schema of YAML 1.2.2, section 10.3.2: there "yes" and "off" are strings.</summary>
    private static JsonNode? ToJson(YamlNode node) => node switch
    {
        YamlMappingNode map =>
            new JsonObject(map.Children.Select(child => KeyValuePair.Create(((YamlScalarNode)child.Key).Value!,
            ToJson(child.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(ToJson)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "" or "~" or "null" or "Null" or "NULL" } => null,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "True" or "TRUE" } => true,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "false" or "False" or "FALSE" } => false,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: { } text } when Number().IsMatch(text) =>
            double.Parse(text, CultureInfo.InvariantCulture),
        YamlScalarNode scalar => scalar.Value,
        _ => throw new ArgumentException($"{node} is no kind of node.", nameof(node)),
    };

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Number();
}
