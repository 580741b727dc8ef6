using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using RigScenarios.Search.Compare;
using UnitsNet;

namespace RigScenarios.Cli.Commands;

/// <summary>Which rigs are compared: files, builds, changes, the base, the days.</summary>
internal sealed class CompareOptions
{
    private readonly Argument<string[]> files = new("FILE")
    {
        Description = "The scenario files, one or more.", Arity = ArgumentArity.OneOrMore,
    };
    private readonly Option<string[]> builds = new("--builds", "--build")
    {
        Description = "Only these builds, by their short names; all of the files if left out.", HelpName = "NAME,NAME",
        DefaultValueFactory = _ => [],
    };
    private readonly Option<string[]> changed = new("--with")
    {
        Description = "Besides, the base with fields changed, under a name of your own; may be given several times. "
            + "Example: --with \"small: kit.brick.part=brick-98wh\"; more than one field with \";\" between them.",
        HelpName = "NAME:PATH=VALUE", DefaultValueFactory = _ => [],
    };
    private readonly Option<string?> @base = new("--base") { Description =
        "The rig that the others are held against; the first if left out.", HelpName = "NAME" };
    private readonly Option<string[]> days = new("--days", "--day")
    {
        Description = "Only these days, by their short names, one after the other; all of each file if left out.",
        HelpName = "NAME", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [],
    };
    private readonly Option<string?> reserve = new("--reserve") { Description =
        "The reserve that you want after wrap, such as \"1 h\"; with less of it the verdict is \"close\".", HelpName = "TIME" };

    /// <summary>One file with its scenario.</summary>
    /// <param name="Number">Its number, from 0: one file may be named twice.</param>
    /// <param name="Path">As it was named.</param>
    /// <param name="Scenario">What it says.</param>
    public sealed record ReadFile(int Number, string Path, Scenario Scenario)
    {
        /// <summary>The file's name without folder and ending.</summary>
        public string Stem => System.IO.Path.GetFileNameWithoutExtension(Path);
    }

    public void AddTo(Command command)
    {
        command.Add(files);
        foreach (var option in (Option[])[builds, changed, @base, days, reserve])
            command.Add(option);
    }

    /// <summary>Reads the files; problems of all of them are told at once.</summary>
    public IReadOnlyList<ReadFile> Read(ParseResult parsed, DateOnly today)
    {
        List<ReadFile> read = [];
        List<Diagnostic> problems = [];
        foreach (var (number, path) in parsed.GetRequiredValue(files).Index())
        {
            try
            {
                read.Add(new(number, path, ScenarioOptions.Read(path, [], today)));
            }
            catch (ScenarioProblemsException found)
            {
                problems.AddRange(found.Problems);
            }
        }
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : read;
    }

    /// <summary>The rigs with their answers, and the place of the base among them.</summary>
    public (IReadOnlyList<ComparedRig> Rigs, int Base) Rigs(ParseResult parsed, IReadOnlyList<ReadFile> read, DateOnly today,
        CancellationToken cancellation)
    {
        var asked = AnswerOptions.EndOnly with
        {
            Today = today, Wish = OptionValue.Read(parsed.GetValue(reserve),
                new DurationFormat(Duration.Zero, Duration.FromHours(1000), "1 h"), "--reserve"),
        };
        var chosen = Chosen(parsed, read);
        Require(chosen.Count > 0, "FILE", "There is no build to look at.", ["a file with a build"], "");
        IReadOnlyList<string> names = Names(chosen);
        var at = Base(parsed, names, chosen);
        var wanted = parsed.GetRequiredValue(days);
        foreach (var file in read)
        {
            foreach (var day in wanted)
                Require(file.Scenario.Days.ContainsKey(day), "--days", $"{file.Stem} has no day \"{day}\".",
                    file.Scenario.Days.Keys, day);
        }
        var variants = Variants(parsed, chosen[at].File.Scenario, names);
        Require(chosen.Count + variants.Count > 1, "FILE", "There is only one rig to look at.",
            ["two builds or files, or a change with --with, such as --with \"cold: conditions.ambient=-10 °C\""], "");
        var rigs = chosen.Zip(names, (rig, name) => (Name: name, rig.File.Scenario, rig.Build))
            .Concat(variants.Select(variant => (variant.Name, variant.Scenario, chosen[at].Build)));
        return ([.. rigs.Select(rig => new ComparedRig(rig.Name, RigAnswer.Of(rig.Scenario, rig.Build, wanted, asked,
            cancellation: cancellation)))], at);
    }

    private List<(ReadFile File, string Build)> Chosen(ParseResult parsed, IReadOnlyList<ReadFile> read)
    {
        // A name that is empty is no build either.
        var wanted = parsed.GetRequiredValue(builds).SelectMany(text => text.Split(',')).Select(name => name.Trim(' '))
            .Distinct().ToList();
        var there = read.SelectMany(file => file.Scenario.Builds.Keys).Distinct().ToList();
        foreach (var name in wanted)
            Require(there.Contains(name), "--builds", $"No file has a build \"{name}\".", there, name);
        // In the order in which they were asked for.
        return [.. read.SelectMany(file => (wanted.Count > 0 ? wanted.Where(file.Scenario.Builds.ContainsKey)
            : file.Scenario.Builds.Keys).Select(build => (file, build)))];
    }

    // A build's name in one file; the file's where it has but one; else both. Files of one name are counted: no page and no table
    // names a folder.
    private static List<string> Names(List<(ReadFile File, string Build)> rigs)
    {
        var used = rigs.Select(rig => rig.File).Distinct().ToList();
        if (used.Count == 1)
            return [.. rigs.Select(rig => rig.Build)];
        string Label(ReadFile file) => used.Count(other => other.Stem == file.Stem
            && other.Number < file.Number) is > 0 and var more
            ? $"{file.Stem}-{more + 1}" : file.Stem;
        return [.. rigs.Select(rig => rigs.Count(other => other.File == rig.File) == 1 ? Label(rig.File)
            : $"{Label(rig.File)}/{rig.Build}")];
    }

    private int Base(ParseResult parsed, IReadOnlyList<string> names, List<(ReadFile File, string Build)> rigs)
    {
        if (parsed.GetValue(@base) is not { } name)
            return 0;
        var at = names.Index().Where(item => item.Item == name).Select(item => item.Index).DefaultIfEmpty(-1).First();
        if (at < 0)
            at = rigs.FindIndex(rig => rig.Build == name || rig.File.Path == name);
        Require(at >= 0, "--base", $"No rig is named \"{name}\".", names, name);
        return at;
    }

    private List<(string Name, Scenario Scenario)> Variants(ParseResult parsed, Scenario scenario, IReadOnlyList<string> names)
    {
        List<(string Name, Scenario Scenario)> variants = [];
        foreach (var text in parsed.GetRequiredValue(changed))
        {
            var colon = text.IndexOf(':', StringComparison.Ordinal);
            var equals = text.IndexOf('=', StringComparison.Ordinal);
            Require(colon > 0 && colon < equals, "--with", $"Found \"{ShownText.Of(text)}\".",
                ["a name, a colon, PATH=VALUE, such as \"small: kit.brick.part=brick-98wh\""], "");
            var name = text[..colon].Trim();
            Require(ShownText.FirstUnseen(name) < 0, "--with",
                $"The name \"{ShownText.Of(name)}\" has characters that nobody sees.",
                ["a name of letters and digits"], "");
            Require(name.Length > 0 && !names.Contains(name) && variants.TrueForAll(variant => variant.Name != name), "--with",
                $"The name \"{ShownText.Of(name)}\" stands for another rig already.", ["a name of its own"], "");
            variants.Add((name, ScenarioOptions.Changed(scenario, text[(colon + 1)..]
                .Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))));
        }
        return variants;
    }

    private static void Require(bool holds, string option, string found, IEnumerable<string> accepted, string name)
    {
        if (!holds)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, option, found,
                string.Join(", ", accepted), name.Length == 0 ? null : NearestName.To(name, accepted))]);
    }
}
