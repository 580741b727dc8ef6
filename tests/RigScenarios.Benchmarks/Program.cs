using BenchmarkDotNet.Running;
using RigScenarios.Benchmarks;
using RigScenarios.Benchmarks.AgedCells;
using RigScenarios.Benchmarks.Cases;
using RigScenarios.Benchmarks.Coverage;
using RigScenarios.Benchmarks.Fronts;
using RigScenarios.Benchmarks.InBrowser;
using RigScenarios.Benchmarks.InventedNotes;
using RigScenarios.Benchmarks.MeasuredCells;
using RigScenarios.Benchmarks.MeasuredCells.Fitted;
using RigScenarios.Benchmarks.Solvers;
using RigScenarios.Benchmarks.Tables;
using RigScenarios.Benchmarks.Ways;
using RigScenarios.Benchmarks.Sweeps;

try
{
    return args switch
    {
        ["discharge", .. var rest] => DischargeCommand.Run(rest),
        ["network", .. var rest] => NetworkCommand.Run(rest),
        ["days", .. var rest] => DayCommand.RunDays(rest),
        ["one-day", .. var rest] => DayCommand.RunOneDay(rest),
        ["balance", .. var rest] => BalanceCommand.Run(rest),
        ["aging", .. var rest] => AgingCommand.Run(rest),
        ["aged-cells", .. var rest] => AgedCellsCommand.Run(rest),
        ["fits", .. var rest] => FitsCommand.Run(rest),
        ["coverage", .. var rest] => CoverageCommand.Run(rest),
        ["fitted-cells", .. var rest] => FittedCellsCommand.Run(rest),
        ["measured-cells", .. var rest] => MeasuredCellsCommand.Run(rest),
        ["search-front", .. var rest] => SearchFrontCommand.Run(rest),
        ["sweep", .. var rest] => SweepCommand.Run(rest),
        ["solvers", .. var rest] => SolversCommand.Run(rest),
        ["log", .. var rest] => LogCommand.Run(rest),
        ["tables", .. var rest] => TablesCommand.Run(rest),
        ["sweep-ways", .. var rest] => SweepWaysCommand.Run(rest),
        ["live", .. var rest] => await LiveCommand.RunAsync(rest),
        ["page", .. var rest] => await PageCommand.RunAsync(rest),
        ["drag", .. var rest] => await DragCommand.RunAsync(rest),
        ["browser", .. var rest] => await BrowserCommand.RunAsync(rest),
        ["browser-size", .. var rest] => BrowserSizeCommand.Run(rest),
        ["pictures", .. var rest] => await PicturesCommand.RunAsync(rest),
        ["mutate", .. var rest] => MutateCommand.Run(rest),
        ["start", .. var rest] => StartCommand.Run(rest),
        ["invent-notes", .. var rest] => InventNotesCommand.Run(rest),
        [] or ["help" or "--help" or "-h"] => Help(),
        _ => Benchmarks(args),
    };
}
catch (Exception error) when (error is CaseFileException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine(error.Message);
    return 2;
}

static int Help()
{
    Console.WriteLine($"""
        {DischargeCommand.Usage}
            run the discharges of a case file, write how each ended
        {NetworkCommand.Usage}
            solve the wirings of a case file, at one voltage and over whole runs, write what came out
        {DayCommand.Days}
            run the scenario files of a folder with their batteries in turn, search the least kit of each, write what came out
        {DayCommand.OneDay}
            run them with their wiring, limits and reserve, write what came out
        {BalanceCommand.Usage}
            answer what a case file asks about the balance of its rigs
        {AgingCommand.Usage}
            follow the histories of a case file, write what became of each battery
        {AgedCellsCommand.Usage}
            predict eleven measured cells by every set of aging laws, write the errors and what the sets say of usual lives
        {FitsCommand.Usage}
            fit the notes and logs of a folder of cases, write what came out
        {CoverageCommand.Usage}
            fit invented batteries whose truth is known, tell how often it lies in the 95 % interval
        {FittedCellsCommand.Usage}
            fit the measured cell at 25 °C, predict its discharges at other temperatures, write the errors
        {MeasuredCellsCommand.Usage}
            predict the measured discharges of tests/RigScenarios.Checks/data/measured, write the errors
        {SearchFrontCommand.Usage}
            search the front of an invented library of so many slots and candidates, tell how far it came
        {SweepCommand.Usage}
            run a family of discharges as a batch, tell how many a second and how far their ends lie from those of the single run
        {SolversCommand.Usage}
            the same beside general solvers, where their tools are on this machine
        {LogCommand.Usage}
            read an invented power log of so many rows and fit the battery to it, tell times and what it says
        {TablesCommand.Usage}
            write tables of so many invented rows, tell times and memory
        {SweepWaysCommand.Usage}
            draw scenarios from every build and day of the scenario files of a folder, run them by batch and by simulation, tell
            how far the two are apart
        {LiveCommand.Usage}
            move one parameter of a notebook to and fro, tell times and memory
        {PageCommand.Usage}
            the same on its living page in Chromium: from the slider's event until the chart is drawn
        {DragCommand.Usage}
            drag a part of a drawing there: from the pointer's move until answer, drawing and charts are drawn
        {BrowserCommand.Usage}
            open the form of a folder that rigscenarios site wrote, in Chromium: first visit to answer, change to drawn answer
        {BrowserSizeCommand.Usage}
            tell what each part of such a folder weighs
        {PicturesCommand.Usage}
            save the pictures that stand for the notebooks, and their first screens
        {MutateCommand.Usage}
            change files of data/ by chance and take each through the doors of the commands, tell what no file may lead to
        {StartCommand.Usage}
            time a command from a cold start, beside a program that prints one word; count the methods compiled while it runs
        {InventNotesCommand.Usage}
            write the invented field notes and the invented log of data/field-notes
        --filter PATTERN
            measure speed (BenchmarkDotNet), for instance --filter *Discharge*
        """);
    return 0;
}

static int Benchmarks(string[] args)
{
    if (!args[0].StartsWith('-'))
    {
        Console.Error.WriteLine($"'{args[0]}' is no command of this program; run it without arguments to see them.");
        return 2;
    }

    BenchmarkSwitcher.FromAssembly(typeof(DischargeCommand).Assembly).Run(args);
    return 0;
}
