using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Reads what the cell tagged <c>parameters</c> declares. Its code is not run.</summary>
internal static class ParameterDeclarations
{
    /// <summary>The parameters in their order.</summary>
    /// <param name="code">The text of the cell.</param>
    public static IReadOnlyList<NotebookParameter> Read(string code) =>
    [
        .. CSharpSyntaxTree.ParseText(code, new CSharpParseOptions(kind: SourceCodeKind.Script)).GetCompilationUnitRoot()
            .Members.OfType<FieldDeclarationSyntax>().Where(field => field.Declaration.Variables.Count == 1)
            .Select(ReadDeclaration).OfType<NotebookParameter>(),
    ];

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
