using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Quickenshtein;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>The parameters of a notebook, and the values that a run uses for them.</summary>
public sealed class NotebookParameters
{
    // The open convention of parameterised notebooks: one cell with this tag.
    internal const string Tag = "parameters";

    private readonly string folder;

    private NotebookParameters(string folder, int? cell, IReadOnlyList<NotebookParameter> all)
    {
        this.folder = folder;
        Cell = cell;
        All = all;
    }

    /// <summary>The parameters in the order of the notebook.</summary>
    public IReadOnlyList<NotebookParameter> All { get; }

    /// <summary>Number of the cell that declares them, or null where the notebook has none.</summary>
    public int? Cell { get; }

    /// <summary>Reads the parameters from the cell tagged <c>parameters</c>. Its code is not run.</summary>
    /// <param name="path">The notebook's file.</param>
    /// <param name="cell">Number and text of that cell; null where the notebook has none.</param>
    internal static NotebookParameters Read(string path, (int Number, string Text)? cell)
    {
        var place = Path.GetDirectoryName(path)!;
        if (cell is not { } declared)
            return new NotebookParameters(place, null, []);
        var root = CSharpSyntaxTree.ParseText(declared.Text, new CSharpParseOptions(kind: SourceCodeKind.Script))
            .GetCompilationUnitRoot();
        var declarations = root.Members.OfType<FieldDeclarationSyntax>().Where(field => field.Declaration.Variables.Count == 1);
        return new NotebookParameters(place, declared.Number,
            [.. declarations.Select(ReadDeclaration).OfType<NotebookParameter>()]);
    }

    /// <summary>
    /// The value of each parameter for a run: what was given, checked, and what the notebook says for the others.
    /// </summary>
    /// <param name="given">Values by name, as a person wrote them; a number may carry its unit.</param>
    /// <exception cref="NotebookInputException">A name is unknown, or a value is of the wrong kind or out of range.</exception>
    public IReadOnlyList<ParameterValue> Resolve(IReadOnlyDictionary<string, string>? given = null) =>
        Resolve(given, new ParameterScope([], new ScenarioChoices(), FallsBack: false));

    internal IReadOnlyList<ParameterValue> Resolve(IReadOnlyDictionary<string, string>? given, ParameterScope scope)
    {
        var problems = new List<string>();
        var read = new Dictionary<string, string>();
        foreach (var (name, text) in given ?? new Dictionary<string, string>())
        {
            if (All.FirstOrDefault(p => p.Name == name) is not { } parameter)
            {
                problems.Add(Unknown(name));
                continue;
            }

            var (value, problem) = parameter.Read(text);
            if (problem is null)
                read[name] = value!;
            else
                problems.Add(problem);
        }

        var values = All.Select(p => new ParameterValue(p, read.GetValueOrDefault(p.Name, p.Default), read.ContainsKey(p.Name)))
            .ToList();
        problems.AddRange(scope.Settle(values, folder));
        return problems.Count > 0 ? throw new NotebookInputException(problems) : values;
    }

    private string Unknown(string name)
    {
        if (All.Count == 0)
            return $"{name}: this notebook has no parameters.";
        var nearest = All.MinBy(p => Levenshtein.GetDistance(p.Name.ToUpperInvariant(), name.ToUpperInvariant()))!;
        var distance = Levenshtein.GetDistance(nearest.Name.ToUpperInvariant(), name.ToUpperInvariant());
        var hint = distance <= Math.Max(3, name.Length / 3) ? $" Did you mean {nearest.Name}?" : "";
        return $"{name}: there is no such parameter.{hint} The notebook has: {string.Join(", ", All.Select(p => p.Name))}.";
    }

    private static NotebookParameter? ReadDeclaration(FieldDeclarationSyntax field)
    {
        var variable = field.Declaration.Variables[0];
        if (variable.Initializer?.Value is not { } value || Kind(field.Declaration.Type, value) is not { } kind)
            return null;
        var comment = field.GetTrailingTrivia().FirstOrDefault(trivia => trivia.IsKind(SyntaxKind.SingleLineCommentTrivia))
            .ToString();
        var type = field.Declaration.Type.ToString().TrimEnd('?');
        var isOptional = field.Declaration.Type is NullableTypeSyntax && value.IsKind(SyntaxKind.NullLiteralExpression);
        return ParameterComment.Read(comment.TrimStart('/').Trim(), kind).Apply(new NotebookParameter
        {
            Name = variable.Identifier.Text,
            Kind = kind,
            Label = variable.Identifier.Text,
            Default = isOptional ? "" : value is LiteralExpressionSyntax { Token.Value: string text } ? text
                : DateOf(value) ?? Plain(value, type),
            IsOptional = isOptional,
            LiteralSuffix = type switch { "decimal" => "m", "float" => "f", _ => "" },
        });
    }

    private static string Plain(ExpressionSyntax value, string type) =>
        type is "decimal" or "float" or "var" ? value.ToString().TrimEnd('m', 'M', 'f', 'F', 'd', 'D') : value.ToString();

    // new(2026, 2, 14) or new DateOnly(2026, 2, 14)
    private static string? DateOf(ExpressionSyntax value) =>
        value is BaseObjectCreationExpressionSyntax { ArgumentList.Arguments: { Count: 3 } arguments }
        && arguments.Select(argument => argument.Expression).OfType<LiteralExpressionSyntax>()
            .Select(literal => literal.Token.Value).OfType<int>().ToList() is [var year, var month, var day]
            ? FormattableString.Invariant($"{year:0000}-{month:00}-{day:00}")
            : null;

    private static ParameterKind? Kind(TypeSyntax type, ExpressionSyntax value) => type.ToString() switch
    {
        "DateOnly?" when value.IsKind(SyntaxKind.NullLiteralExpression) => ParameterKind.Date,
        "double?" or "float?" or "decimal?" => ParameterKind.Number,
        "int?" or "long?" => ParameterKind.WholeNumber,
        "DateOnly" when DateOf(value) is not null => ParameterKind.Date,
        "double" or "float" or "decimal" => ParameterKind.Number,
        "int" or "long" => ParameterKind.WholeNumber,
        "string" => ParameterKind.Text,
        "bool" => ParameterKind.YesNo,
        "var" => KindOf(value),
        _ => null,
    };

    private static ParameterKind? KindOf(ExpressionSyntax value) => value switch
    {
        PrefixUnaryExpressionSyntax { Operand: { } operand } => KindOf(operand),
        LiteralExpressionSyntax { Token.Value: int or long } => ParameterKind.WholeNumber,
        LiteralExpressionSyntax { Token.Value: double or float or decimal } => ParameterKind.Number,
        LiteralExpressionSyntax { Token.Value: string } => ParameterKind.Text,
        LiteralExpressionSyntax { Token.Value: bool } => ParameterKind.YesNo,
        _ => null,
    };
}

/// <summary>The value of a parameter in a run.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Value">Its value in plain form ("-20", "true", "98 Wh").</param>
/// <param name="IsGiven">Whether it was given for the run; otherwise it is the notebook's own.</param>
public sealed record ParameterValue(NotebookParameter Parameter, string Value, bool IsGiven)
{
    internal object? Typed => Parameter.Typed(Value);
}
