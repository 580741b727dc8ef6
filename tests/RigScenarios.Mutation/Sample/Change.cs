using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace RigScenarios.Mutation.Sample;

/// <summary>One change of one place of a file: an operator replaced, a condition turned round, a bound taken for the
/// other.</summary>
/// <param name="Path">The file.</param>
/// <param name="Tree">The file as it would be.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Before">What stands there.</param>
/// <param name="After">What the change puts there.</param>
internal sealed record Change(string Path, SyntaxTree Tree, int Line, string Before, string After)
{
    private static readonly Dictionary<SyntaxKind, SyntaxKind> Others = new()
    {
        [SyntaxKind.PlusToken] = SyntaxKind.MinusToken,
        [SyntaxKind.MinusToken] = SyntaxKind.PlusToken,
        [SyntaxKind.AsteriskToken] = SyntaxKind.SlashToken,
        [SyntaxKind.SlashToken] = SyntaxKind.AsteriskToken,
        [SyntaxKind.LessThanToken] = SyntaxKind.GreaterThanEqualsToken,
        [SyntaxKind.GreaterThanEqualsToken] = SyntaxKind.LessThanToken,
        [SyntaxKind.GreaterThanToken] = SyntaxKind.LessThanEqualsToken,
        [SyntaxKind.LessThanEqualsToken] = SyntaxKind.GreaterThanToken,
        [SyntaxKind.EqualsEqualsToken] = SyntaxKind.ExclamationEqualsToken,
        [SyntaxKind.ExclamationEqualsToken] = SyntaxKind.EqualsEqualsToken,
        [SyntaxKind.AmpersandAmpersandToken] = SyntaxKind.BarBarToken,
        [SyntaxKind.BarBarToken] = SyntaxKind.AmpersandAmpersandToken,
        [SyntaxKind.PlusEqualsToken] = SyntaxKind.MinusEqualsToken,
        [SyntaxKind.MinusEqualsToken] = SyntaxKind.PlusEqualsToken,
    };

    private static readonly Dictionary<string, string> OtherNames = new()
    {
        ["Min"] = "Max", ["Max"] = "Min", ["Sin"] = "Cos", ["Cos"] = "Sin", ["Exp"] = "Abs", ["Floor"] = "Ceiling",
        ["Ceiling"] = "Floor", ["Any"] = "All", ["All"] = "Any", ["First"] = "Last", ["Last"] = "First",
        ["MinBy"] = "MaxBy", ["MaxBy"] = "MinBy",
    };

    /// <summary>Every change of a file that this program knows, in the order of the places.</summary>
    public static IEnumerable<Change> Of(SyntaxTree tree)
    {
        var root = tree.GetRoot();
        foreach (var node in root.DescendantNodes())
        {
            // Words are held by the snapshots of the commands, not by a room's tests.
            if (node.FirstAncestorOrSelf<InterpolatedStringExpressionSyntax>() is not null
                || node.FirstAncestorOrSelf<AttributeSyntax>() is not null)
                continue;
            var (old, other) = node switch
            {
                BinaryExpressionSyntax binary when Others.TryGetValue(binary.OperatorToken.Kind(), out var kind)
                    && binary.DescendantNodes().OfType<LiteralExpressionSyntax>().All(literal =>
                        !literal.IsKind(SyntaxKind.StringLiteralExpression)) => (binary.OperatorToken, SyntaxFactory.Token(kind)),
                AssignmentExpressionSyntax set when Others.TryGetValue(set.OperatorToken.Kind(), out var kind) =>
                    (set.OperatorToken, SyntaxFactory.Token(kind)),
                MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax } member
                    when OtherNames.TryGetValue(member.Name.Identifier.Text, out var name) =>
                    (member.Name.Identifier, SyntaxFactory.Identifier(name)),
                _ => (default, default),
            };
            if (old.IsKind(SyntaxKind.None))
                continue;
            // Read anew: a replaced token alone leaves its node what it was, and the compiler goes by the node.
            var changed = root.ReplaceToken(old, other.WithTriviaFrom(old)).ToFullString();
            yield return new Change(tree.FilePath,
                CSharpSyntaxTree.ParseText(changed, (CSharpParseOptions)tree.Options, tree.FilePath),
                old.GetLocation().GetLineSpan().StartLinePosition.Line + 1, old.Text, other.Text);
        }
    }
}
