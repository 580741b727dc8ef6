using System.Diagnostics;
using System.Globalization;
using RigScenarios.Mutation.Sample;

// ROOM EVERY: changes every so-manieth place of a room and runs the room's tests against each change.
if (args.Length != 2 || !int.TryParse(args[1], CultureInfo.InvariantCulture, out var every) || every < 1)
{
    Console.Error.WriteLine(
        "Give a room of src/RigScenarios and a number: every so-manieth place is changed. For instance: Batteries 12");
    return 2;
}
var root = Directory.GetCurrentDirectory();
var folder = Path.Combine(root, "src", "RigScenarios", args[0]);
if (!Directory.Exists(folder))
{
    Console.Error.WriteLine($"There is no folder src/RigScenarios/{args[0]} here. Run it from the folder of the repository.");
    return 2;
}
var missing = new[] { "RigScenarios.Tests", "RigScenarios.Checks" }.Where(name => !Directory.Exists(RoomTests.Built(root, name)));
if (missing.FirstOrDefault() is { } unbuilt)
{
    Console.Error.WriteLine($"Not built: dotnet build -c Release tests/{unbuilt}");
    return 2;
}

var library = new Library(root, RoomTests.Built(root, "RigScenarios.Tests"));
using var tests = new RoomTests(root, args[0]);
if (Put(null) is { } error)
{
    Console.Error.WriteLine($"The library as it is does not compile here: {error}");
    return 1;
}
var watch = Stopwatch.StartNew();
if (tests.FirstFailure(TimeSpan.FromMinutes(20)) is { } red)
{
    Console.Error.WriteLine($"The tests of {args[0]} are red before anything is changed: {red}");
    return 1;
}
// A change that makes a loop endless is noticed as surely as one that makes a test red.
var limit = (3 * watch.Elapsed) + TimeSpan.FromSeconds(10);
var all = library.In(folder).SelectMany(Change.Of).ToList();
// In the middle of each stretch, so that no file is looked at only in its first line.
var chosen = all.Where((_, place) => place % every == every / 2).ToList();
Console.WriteLine($"{args[0]}: {all.Count} places that can be changed, {chosen.Count} of them tried; the tests take "
    + $"{watch.Elapsed.TotalSeconds:0} s.");
var (killed, refused) = (0, 0);
foreach (var change in chosen)
{
    var where = $"{Path.GetRelativePath(folder, change.Path)}:{change.Line} {change.Before} -> {change.After}";
    if (Put(change) is not null)
    {
        refused++;
        continue;
    }
    var failure = tests.FirstFailure(limit);
    killed += failure is null ? 0 : 1;
    Console.WriteLine(failure is null ? $"SURVIVED {where}" : $"killed   {where}: {failure}");
}
var counted = chosen.Count - refused;
Console.WriteLine($"{args[0]}: {killed} of {counted} changes were noticed"
    + $"{(counted > 0 ? $" ({100.0 * killed / counted:0} %)" : "")}; {refused} more do not compile.");
return 0;

string? Put(Change? change) =>
    tests.Libraries.Select(file => library.Write(change, file)).FirstOrDefault(error => error is not null);
