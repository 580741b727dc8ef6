using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using RigScenarios.Notebooks.Engine;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Finds what a cell takes from earlier cells, so that a change reruns only what rests on it.</summary>
internal static class CellReferences
{
    /// <summary>Looks at every name in the cell.</summary>
    /// <param name="model">The cell as the compiler understood it.</param>
    /// <param name="cellOfAssembly">Number of the cell that each earlier assembly was compiled from.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static CellUses Find(SemanticModel model, IReadOnlyDictionary<string, int> cellOfAssembly,
        CancellationToken cancellation)
    {
        var (cells, reads, writes) = (new HashSet<int>(), new HashSet<(int, string)>(), new HashSet<(int, string)>());
        foreach (var name in model.SyntaxTree.GetRoot(cancellation).DescendantNodes().OfType<SimpleNameSyntax>())
        {
            var symbol = model.GetSymbolInfo(name, cancellation).Symbol;
            if (symbol?.ContainingAssembly?.Name is not { } assembly || !cellOfAssembly.TryGetValue(assembly, out var cell))
                continue;
            cells.Add(cell);
            if (symbol is not IFieldSymbol { ContainingType.IsScriptClass: true })
                continue;
            reads.Add((cell, symbol.Name));
            if (IsChanged(name))
                writes.Add((cell, symbol.Name));
        }

        return new CellUses(cells, reads, writes);
    }

    // Calls that change an object (list.Add) can't be told from others that don't; docs/notebooks.md asks authors to leave what
    // an earlier cell made as it is, and a test compares partial with full runs.
    private static bool IsChanged(SimpleNameSyntax name)
    {
        ExpressionSyntax target = name;
        while (target.Parent is MemberAccessExpressionSyntax member && member.Expression == target
            || target.Parent is ElementAccessExpressionSyntax element && element.Expression == target
            || target.Parent is ParenthesizedExpressionSyntax)
            target = (ExpressionSyntax)target.Parent;
        return target.Parent switch
        {
            AssignmentExpressionSyntax assignment => assignment.Left == target,
            PrefixUnaryExpressionSyntax prefix => prefix.IsKind(SyntaxKind.PreIncrementExpression)
                || prefix.IsKind(SyntaxKind.PreDecrementExpression),
            PostfixUnaryExpressionSyntax postfix => postfix.IsKind(SyntaxKind.PostIncrementExpression)
                || postfix.IsKind(SyntaxKind.PostDecrementExpression),
            ArgumentSyntax { Parent: TupleExpressionSyntax { Parent: AssignmentExpressionSyntax assignment } tuple } =>
                assignment.Left == tuple,
            ArgumentSyntax argument => argument.RefOrOutKeyword.IsKind(SyntaxKind.RefKeyword)
                || argument.RefOrOutKeyword.IsKind(SyntaxKind.OutKeyword),
            _ => false,
        };
    }
}
