using System.Text.Json;

namespace RigScenarios.Page.Tests.Servers;

/// <summary>Notebooks made for these tests: one that answers at once, one that takes as long as it is told to.</summary>
internal static class TrialNotebooks
{
    private const string Start = "RigScenarios.Notebooks.NotebookSession.Start();";

    public static void WriteTo(string folder)
    {
        Write(folder, "01-quick",
            (false, "# What is said?\n\nA notebook for tests. See [the slow one](02-slow.ipynb). <b>bold</b> "
                + "<script>alert(1)</script>"),
            (true, Start),
            (true, "double amount = 5;       // how much, °C, 0 to 10\nstring words = \"plain\";  // any words\nstring side = "
                + "\"left\";    // which side, one of left | right\nbool loud = false;       // whether it is loud"),
            (true, "Answer($\"Words: {words}. Side: {side}. Loud: {loud}.\", \"Carry a reserve.\");"),
            (true, "Table([\"amount\", \"words\"], [[amount, words]], \"What was given\");"),
            (true, "Console.WriteLine($\"Printed {amount}\");"));
        Write(folder, "02-slow",
            (false, "# Does it stop?"),
            (true, Start),
            (true, "double seconds = 0;     // how long it works, s, 0 to 600\nbool listens = true;    // whether it looks if "
                + "it is to stop\nint megabytes = 0;      // memory it takes, MB, 0 to 4000"),
            (true, """
                var clock = System.Diagnostics.Stopwatch.StartNew();
                while (clock.Elapsed.TotalSeconds < seconds)
                {
                    if (listens)
                        RigScenarios.Notebooks.NotebookSession.Cancellation.ThrowIfCancellationRequested();
                    RigScenarios.Notebooks.NotebookSession.Progress(clock.Elapsed.TotalSeconds / seconds, "working");
                    System.Threading.Thread.Sleep(1);
                }
                Answer($"Worked {seconds} s.");
                """));
        Write(folder, "03-fails",
            (false, "# Does it say why?"),
            (true, Start),
            (true, "int fails = 1;    // whether it fails, 0 to 1"),
            (true, "var one = 1;\nif (fails == 1)\n    throw new InvalidOperationException(\"The lens is "
                + "<b>missing</b>.\");\nAnswer(\"All is well.\");"));
        Write(folder, "05-moves",
            (false, "# Where does the plate go?"),
            (true, Start),
            (true, "string scenario = "
                + $"{JsonSerializer.Serialize(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"))}; "
                + " // kit and builds, a scenario file\nstring build = \"tripod\";  // build of the camera, a build of "
                + "scenario\nvar places = \"\";  // parts moved on the drawing, places of build"),
            (true, "var plans = ScenarioFile.Read(scenario);"),
            (true, "var moved = MovedPlaces.Apply(plans, build, places);\nvar balance = ScenarioBalance.Of(moved, "
                + "build);\nAnswer(BalanceWords.Answer(balance), BalanceWords.Cautions(balance));"),
            (true, "Show(RigDrawing.Of(balance.Rig.Placed, RigDrawingOptions.Of(balance)));"),
            (true, """
                if (balance.Present is { } head)
                {
                    var plate = MovedPlaces.Of(balance.Rig).First(part => part.Name == "plate");
                    var envelope = BalanceEnvelope.Of(balance.Rig.Placed, head.Head,
                        RigVariable.Offset("plate", PlacementField.OffsetX, plate.Range),
                        RigVariable.OfMass("brick", Mass.FromGrams(300), Mass.FromGrams(2500)));
                    Show(EnvelopeChart.Of(envelope, new EnvelopeChartOptions { Names = RigDrawingOptions.Of(balance).Names,
                        Present = (plate.At, balance.Rig.Placed.Parts["brick"].Mass) }));
                }
                """));
        Write(folder, "06-of-the-file",
            (false, "# What does the file say?"),
            (true, Start),
            (true, "string scenario = "
                + $"{JsonSerializer.Serialize(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"))}; "
                + " // kit and days, a scenario file\ndouble? air = null;  // air of the day, °C, -30 to 40"),
            (true, """
                var plans = ScenarioFile.Read(scenario);
                double here = AsInFile(air, plans.AmbientOn(plans.Days.Values.First()).DegreesCelsius);
                if (here < 0)
                    MovesNothing(air, "It freezes anyway.");
                Answer($"The air is at {here} °C.");
                """));
        File.WriteAllText(Path.Combine(folder, "04-broken.ipynb"), "{ \"nbformat\": 4, \"cells\": [");
    }

    private static void Write(string folder, string name, params (bool IsCode, string Text)[] cells)
    {
        var notebook = new
        {
            nbformat = 4,
            nbformat_minor = 5,
            metadata = new { },
            cells = cells.Select((cell, i) => new
            {
                cell_type = cell.IsCode ? "code" : "markdown",
                id = $"c{i}",
                metadata = new { tags = cell.IsCode && i == 2 ? ["parameters"] : Array.Empty<string>() },
                source = cell.Text,
            }),
        };
        File.WriteAllText(Path.Combine(folder, name + ".ipynb"), JsonSerializer.Serialize(notebook));
    }
}
