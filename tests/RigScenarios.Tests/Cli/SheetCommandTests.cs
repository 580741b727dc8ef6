using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Tests.Costs;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

/// <summary>The sheets for building, for shopping and for the day: as pages, as tables, as JSON.</summary>
[Collection(nameof(ConsoleRun))]
public sealed class SheetCommandTests
{
    public static TheoryData<string> Demos => ["winter-harbour", "market-hall", "island-crossing", "night-dolly", "river-ferry",
        "teaching-kit", "pottery-class"];

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_build_sheet_has_every_part_once_after_what_carries_it(string demo)
    {
        var scenario = Scenario(demo);
        foreach (var build in scenario.Builds.Keys)
        {
            var answer = Answer(scenario, build);
            var steps = AssemblyStep.Of(answer);
            Assert.Equal(answer.TheBuild.Things.Distinct().Order(), steps.Select(step => step.Name).Order());
            var at = steps.Select((step, i) => (step.Name, i)).ToDictionary(item => item.Name, item => item.i);
            Each.Of(steps.Where(step => step.Place?.On is not null), step => Assert.True(at[step.Place!.On!] < at[step.Name]));
            // Even where the page is full no part is left out, no caution and no limit that is passed.
            var page = SheetPage.Of(TakeAlongSheets.Of(answer, SheetKind.Build));
            Assert.DoesNotMatch(@"Left out[^<]* parts", page);
            var text = SheetTextOf.Page(page);
            Each.Of(steps.Where(step => step.Part.Kind != RigScenarios.Parts.PartKind.Cable), step =>
                Assert.Contains(step.Part.Name, text, StringComparison.Ordinal));
            foreach (var limit in answer.Questions.Where(question => question.Kind is QuestionKind.Wiring or QuestionKind.Balance
                or QuestionKind.Stand).SelectMany(question => question.Limits)
                .Where(limit => limit is { IsPassed: true, HasForce: true }
                    && AnswerDetails.Of(answer).Any(section => section.Limits.Contains(limit))))
                Assert.Contains(LimitSentences.Of(limit, new AnswerTimes(answer.Plan.Days)), text, StringComparison.Ordinal);
            Assert.Contains(AnswerSentences.Headline(answer), text, StringComparison.Ordinal);
            Assert.Contains(AnswerCautions.Always, text, StringComparison.Ordinal);
            Assert.Contains(AnswerCautions.Polarity, text, StringComparison.Ordinal);
            Assert.Contains(BalanceWords.Lifting, text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("winter-harbour", "tripod")]
    [InlineData("night-dolly", "thin-lead")]
    [InlineData("market-hall", "hand")]
    public void What_stands_on_a_build_sheet(string demo, string build) => Snapshot.Match(
        SheetTextOf.Page(SheetPage.Of(TakeAlongSheets.Of(Answer(Scenario(demo), build), SheetKind.Build), whole: true)),
        $"SheetCommandTests.Build-{demo}-{build}");

    [Fact]
    public void A_paper_that_is_named_has_more_room_than_what_fits_on_both()
    {
        var answer = Answer(Scenario("night-dolly"), "thin-lead");
        var sheet = TakeAlongSheets.Of(answer, SheetKind.Build);
        string Page(SheetPaper paper) => SheetPage.Of(sheet, paper: paper);
        Assert.DoesNotContain("{ size:", Page(SheetPaper.Either), StringComparison.Ordinal);
        Assert.Contains("@page { size: A4; }", Page(SheetPaper.A4), StringComparison.Ordinal);
        Assert.Contains("@page { size: letter; }", Page(SheetPaper.Letter), StringComparison.Ordinal);
        // A4 is 17.6 mm higher than Letter (ISO 216 against 11 in): what did not fit on both fits there, or in larger type.
        Assert.True(Page(SheetPaper.A4).Length > Page(SheetPaper.Either).Length || Size(SheetPaper.A4) > Size(SheetPaper.Either));
        double Size(SheetPaper paper) => double.Parse(Page(paper).Split("font-size:")[^1].Split("pt")[0],
            System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void The_table_of_the_build_has_figures_as_figures()
    {
        var answer = Answer(Scenario("winter-harbour"), "tripod");
        var table = TakeAlongSheets.Table(answer, SheetKind.Build);
        var csv = table.ToCsv();
        Assert.StartsWith("\uFEFF\"step\",\"part\",\"what it is\",\"count\",\"mass (kg)\",", csv, StringComparison.Ordinal);
        Assert.Contains("\r\n10,\"plate\",\"Plate with voltage guard\",1,0.21,\"long-rods\",-168,0,-10,0,0,0,-190,-136,368,32,"
            + "\"no\",,,,\r\n", csv, StringComparison.Ordinal);
        // Tripod and head have no place on the rig: nothing there, not 0.
        Assert.Contains("\r\n1,\"legs\",\"Middle tripod\",1,3.65,\"the ground\",,,,", csv, StringComparison.Ordinal);
        var mass = table.Columns.Index().Single(column => column.Item.Name == "mass").Index;
        Assert.Equal(answer.Scenario.PartOf("legs")!.Mass!.Value.Kilograms + answer.Scenario.PartOf("head")!.Mass!.Value.Kilograms
            + answer.Balance!.Mass.Mass.Kilograms, (double)table.Rows.Sum(row => row[mass].Number!.Value), 3);
    }

    [Fact]
    public void The_table_of_the_day_has_every_block_swap_charge_and_stop_in_order()
    {
        var answer = Answer(Scenario("island-crossing"), "tripod");
        var table = TakeAlongSheets.Table(answer, SheetKind.Day);
        int Count(string what) => table.Rows.Count(row => row[5].Text == what);
        Assert.Equal(answer.Plan.Days.Sum(day => day.Blocks.Count), Count("block"));
        Assert.Equal(answer.Simulation.Swaps.Count, Count("swap"));
        Assert.Equal(answer.Simulation.DownTimes.Count(down => !down.IsPlanned), Count("without"));
        Assert.True(Count("swap") > 3 && Count("charging") > 3 && Count("without") > 0);
        var begins = table.Rows.Select(row => row[3].Number!.Value).ToList();
        Assert.Equal(begins.Order(), begins);
        Assert.Contains("\r\n1,\"07:00 on day 1\",\"07:45 on day 1\",7,7.75,\"block\",\"Rigging on the quay\",\"all standby\","
            + ",,,\r\n", table.ToCsv(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cell_is_a_text_in_quotes_a_bare_number_or_nothing()
    {
        var table = new SheetTable([new("a \"name\""), new("width", "mm"), new("from", "h", "since noon")],
            [[SheetCell.Of("say \"no\", twice\r\nor not"), SheetCell.Of(1e-5), SheetCell.Of((double?)null)],
                [SheetCell.Of(""), SheetCell.Of(-1234567.5), SheetCell.Of(12.30m)]]);
        Assert.Equal("\uFEFF\"a \"\"name\"\"\",\"width (mm)\",\"from (h since noon)\"\r\n"
            + "\"say \"\"no\"\", twice\r\nor not\",0,\r\n,-1234567.5,12.3\r\n", table.ToCsv());
        Assert.Equal(["a_\"name\"", "width_mm", "from_h"], table.Columns.Select(column => column.Key));
    }

    [Fact]
    public void The_shopping_list_sums_what_has_a_price_and_names_what_has_none()
    {
        // By hand: battery 200 and three lights of 100 to buy, the camera for two days of 90, no price for the regulator.
        var scenario = PricedScenario.Read("budget: 4000 EUR, vat: net, rented-days: 2", "camera: rented, plate: owned");
        var (sheet, table) = TakeAlongSheets.Shopping(scenario, null);
        var cost = RigScenarios.Costs.KitCost.OfAll(scenario);
        var text = SheetTextOf.Page(SheetPage.Of(sheet));
        Assert.Contains("Prices are net, without value added tax. Rented for 2 days.", text, StringComparison.Ordinal);
        Assert.Contains("180 EUR", text, StringComparison.Ordinal);
        Assert.Contains("No price is given for regulator: what it costs comes on top.", text, StringComparison.Ordinal);
        Assert.Contains("Together at least 680 EUR. Left of the budget: at most 3,320 EUR.", text, StringComparison.Ordinal);
        Assert.Equal(cost.Total, table.Rows.Sum(row => row[8].Number ?? 0));
        Snapshot.Match(text + table.ToCsv().TrimStart('\uFEFF').ReplaceLineEndings("\n"), "SheetCommandTests.Shopping");
    }

    [Fact]
    public void Nothing_to_pay_and_not_known_are_two_things()
    {
        string Headline(string had, string costs = "") =>
            TakeAlongSheets.Shopping(PricedScenario.Read(costs, had), null).Sheet.Headline;
        Assert.Equal("Nothing to pay: all of it is owned.", Headline("", "others-are: owned"));
        var scenario = Scenario("night-dolly");
        var free = scenario with
        {
            Library = new(scenario.Library.Select(part => KeyValuePair.Create(part.Key,
                part.Value with { Buy = null, RentPerDay = null, RentPerWeek = null, RentPerMonth = null }))),
            Parts = new(scenario.Parts.Select(part => KeyValuePair.Create(part.Key,
                part.Value with { Buy = null, RentPerDay = null, RentPerWeek = null, RentPerMonth = null }))),
        };
        Assert.Equal("What it comes to is not known: nothing has a price.",
            TakeAlongSheets.Shopping(free, null).Sheet.Headline);
        Assert.Contains("Over the budget: at least ", Headline("", "budget: 100 EUR"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_command_writes_a_page_a_table_and_JSON()
    {
        using var folder = new TemporaryFolder();
        var file = Repository.Data("scenarios", "night-dolly.yaml");
        var (page, table) = (Path.Combine(folder.Path, "build.html"), Path.Combine(folder.Path, "build.csv"));
        var (code, text, error) = await ConsoleRun.RunAsync("sheet", file, "--kind", "build", "--build", "heavy-lead", "--paper",
            "letter", "--out", page);
        Assert.Equal((0, ""), (code, error));
        Assert.Contains("Page: ", text, StringComparison.Ordinal);
        var html = await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken);
        Assert.DoesNotMatch("https?://|<script|url\\(|src=", html);
        Assert.DoesNotContain(Repository.Root, html, StringComparison.Ordinal);
        (code, text, _) = await ConsoleRun.RunAsync("sheet", file, "--kind", "build", "--build", "heavy-lead", "--out", table,
            "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios sheet 1", json.RootElement.GetProperty("format").GetString());
        Assert.Equal("heavy-lead", json.RootElement.GetProperty("build").GetString());
        var csv = await File.ReadAllLinesAsync(table, TestContext.Current.CancellationToken);
        Assert.Equal(csv.Length - 1, json.RootElement.GetProperty("rows").GetArrayLength());
        Assert.Equal(JsonValueKind.Number, json.RootElement.GetProperty("rows")[0].GetProperty("mass_kg").ValueKind);
    }

    [Fact]
    public async Task The_shopping_list_needs_no_build_and_days_that_are_named_are_rented()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("rented.yaml", PricedScenario.Text("others-are: rented"));
        var (code, text, error) = await ConsoleRun.RunAsync("sheet", file, "--kind", "shopping", "--json");
        Assert.Equal((0, ""), (code, error));
        using var json = JsonDocument.Parse(text);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("build").ValueKind);
        var camera = json.RootElement.GetProperty("rows").EnumerateArray().Single(row =>
            row.GetProperty("thing").GetString() == "camera");
        Assert.Equal(90m * ScenarioFile.Read(file).Days.Count, camera.GetProperty("each_EUR").GetDecimal());
    }

    [Theory]
    [InlineData("others-are: rented")]
    [InlineData("others-are: rented, rented-days: 9")]
    [InlineData("budget: 3000 EUR, vat: gross")]
    public void The_list_of_a_build_comes_to_what_the_answer_says(string costs)
    {
        var scenario = PricedScenario.Read(costs);
        var answer = Answer(scenario, scenario.Builds.Keys.First());
        var table = TakeAlongSheets.Table(answer, SheetKind.Shopping);
        Assert.Equal(answer.Cost!.Total, table.Rows.Sum(row => row[8].Number ?? 0));
        Assert.Equal(answer.Cost.Lines.Select(line => line.Name), table.Rows.Select(row => row[0].Text));
        Assert.Contains(RigScenarios.Costs.MoneyText.Of(answer.Cost.TotalMoney!.Value),
            TakeAlongSheets.Of(answer, SheetKind.Shopping).Headline, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Accepted: build, shopping, day; such as \"--kind build\"", "--out", "sheet.html")]
    [InlineData("Did you mean \"build\"?", "--kind", "bild", "--out", "sheet.html")]
    [InlineData("Accepted: a4, letter", "--kind", "build", "--out", "sheet.html", "--paper", "a3")]
    [InlineData("Nothing is asked for", "--kind", "build")]
    [InlineData("a page (.html) or a table (.csv)", "--kind", "build", "--out", "sheet.pdf")]
    [InlineData("--paper and --whole are for a page", "--kind", "build", "--out", "sheet.csv", "--paper", "a4")]
    [InlineData("The scenario has no build \"thin-led\"", "--kind", "shopping", "--build", "thin-led", "--out", "sheet.html")]
    public async Task What_can_not_be_is_refused_before_anything_is_written(string told, params string[] options)
    {
        var (code, _, error) = await ConsoleRun.RunAsync(["sheet", Repository.Data("scenarios", "night-dolly.yaml"), .. options]);
        Assert.Equal(2, code);
        Assert.Contains(told, error, StringComparison.Ordinal);
        Assert.False(File.Exists("sheet.html") || File.Exists("sheet.csv") || File.Exists("sheet.pdf"));
    }

    private static Scenario Scenario(string demo) => ScenarioFile.Read(Repository.Data("scenarios", $"{demo}.yaml"));

    private static RigAnswer Answer(Scenario scenario, string build) => RigAnswer.Of(scenario, build, [],
        AnswerOptions.EndOnly with { Today = new DateOnly(2026, 11, 30) }, cancellation: TestContext.Current.CancellationToken);
}
