using System.Linq.Expressions;
using System.Reflection;
using HingeSelector.Rules.Conditions;
using NRules;
using NRules.RuleModel;
using NRules.RuleModel.Builders;

namespace HingeSelector.Rules.Firing;

/// <summary>Hands definitions to the engine.</summary>
internal sealed class NetworkBuilder
{
    private static readonly MethodInfo _holds = typeof(SubjectTest).GetMethod(nameof(SubjectTest.Holds))!;
    private static readonly MethodInfo _is = typeof(MarkTest).GetMethod(nameof(MarkTest.Is))!;
    private static readonly MethodInfo _run = typeof(Conclude).GetMethod(nameof(Conclude.Run))!;

    // Name and type of a parameter must be those of the pattern, so both are taken from here.
    private static readonly ParameterExpression _undecided = Expression.Parameter(typeof(UndecidedAthlete), "athlete");
    private static readonly ParameterExpression _decided = Expression.Parameter(typeof(DecidedAthlete), "athlete");
    private static readonly ParameterExpression _first = Expression.Parameter(typeof(FirstCandidate), "candidate");
    private static readonly ParameterExpression _second = Expression.Parameter(typeof(SecondCandidate), "candidate");
    private static readonly ParameterExpression _mark = Expression.Parameter(typeof(Mark), "mark");
    private static readonly ParameterExpression _context = Expression.Parameter(typeof(IContext), "context");

    private readonly MarkCodes _codes;
    private readonly IReadOnlySet<int> _wanted;
    private readonly Dictionary<string, int> _uses;

    private NetworkBuilder(int findings, IReadOnlyList<Definition> definitions)
    {
        _codes = new MarkCodes(findings);
        _wanted = Definitions.Wanted(definitions);
        _uses = definitions.SelectMany(d => d.Branch.Conditions).GroupBy(c => c.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
    }

    /// <summary>Builds the network.</summary>
    /// <param name="findings">How many findings the rule book has.</param>
    /// <param name="definitions">What it is built from, in any order.</param>
    public static ISessionFactory Build(int findings, IReadOnlyList<Definition> definitions)
    {
        RefuseSharedNames(definitions);
        var builder = new NetworkBuilder(findings, definitions);
        var compiler = new RuleCompiler(new RuleCompilerOptions { UnsupportedExpressionHandling = RuleCompilerUnsupportedExpressionsHandling.TreatAsNotEqual })
        {
            ExpressionCompiler = new ClosureCompiler(),
        };
        return compiler.Compile(definitions.Select(builder.Define).ToList());
    }

    // The engine takes two rules of one name without a word.
    private static void RefuseSharedNames(IReadOnlyList<Definition> definitions)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var definition in definitions)
        {
            if (!names.Add(definition.Name))
                throw new NetworkException($"Two rules of the network are named '{definition.Name}'.");
        }
    }

    private IRuleDefinition Define(Definition definition)
    {
        var subject = definition.Asks switch
        {
            SubjectKind.Undecided => _undecided,
            SubjectKind.Athlete => _decided,
            SubjectKind.First => _first,
            _ => _second,
        };
        var left = new List<RuleElement> { Pattern(subject, Questions(definition).Select(q => Holds(q, subject))) };
        foreach (var mark in definition.Branch.Marks)
            left.Add(Element.Exists(Pattern(_mark, [Expression.Lambda<Func<Mark, bool>>(Expression.Call(Expression.Constant(new MarkTest(mark)), _is, _mark), _mark)])));
        return Element.RuleDefinition(definition.Name, "", definition.Priority, Element.AndGroup(left), Element.ActionGroup(Element.Action(Run(definition, subject))));
    }

    // Of an athlete, what several definitions ask has a node of its own, the most used first, so that definitions that begin alike share
    // the beginning; what only one asks is asked at one go. Of a candidate everything is: there are fifteen of them to ask.
    private IReadOnlyList<SubjectTest> Questions(Definition definition)
    {
        var conditions = definition.Branch.Conditions.OrderByDescending(c => _uses[c.Key]).ThenBy(c => c.Key, StringComparer.Ordinal).ToList();
        if (definition.Asks is SubjectKind.First or SubjectKind.Second)
            return [new SubjectTest(definition.Variants, conditions)];
        if (conditions.Count == 0)
            return [];
        var own = conditions.Where(c => _uses[c.Key] == 1).ToList();
        return [SubjectTest.Drawer(conditions[0]), .. conditions.Except(own).Select(c => new SubjectTest([c])), .. own.Count > 0 ? [new SubjectTest(own)] : Array.Empty<SubjectTest>()];
    }

    private static PatternElement Pattern(ParameterExpression subject, IEnumerable<LambdaExpression> conditions)
        => Element.Pattern(subject.Type, subject.Name!, conditions.Select(c => new KeyValuePair<string, LambdaExpression>(PatternElement.ConditionName, c)));

    private static LambdaExpression Holds(SubjectTest test, ParameterExpression subject)
    {
        var call = Expression.Call(Expression.Constant(test), _holds, subject);
        return subject switch
        {
            _ when subject == _undecided => Expression.Lambda<Func<UndecidedAthlete, bool>>(call, subject),
            _ when subject == _decided => Expression.Lambda<Func<DecidedAthlete, bool>>(call, subject),
            _ when subject == _first => Expression.Lambda<Func<FirstCandidate, bool>>(call, subject),
            _ => Expression.Lambda<Func<SecondCandidate, bool>>(call, subject),
        };
    }

    private LambdaExpression Run(Definition definition, ParameterExpression subject)
    {
        var about = definition.Sets.Select(_codes.FindingOf).OfType<FindingRead>().ToList();
        var conclude = new Conclude(
            definition.Rules,
            [.. about.Where(a => a.Present).Select(a => a.Finding)],
            [.. about.Where(a => !a.Present).Select(a => a.Finding)],
            [.. definition.Sets.Where(_wanted.Contains)]);
        var call = Expression.Call(Expression.Constant(conclude), _run, _context, subject);
        return subject switch
        {
            _ when subject == _undecided => Expression.Lambda<Action<IContext, UndecidedAthlete>>(call, _context, subject),
            _ when subject == _decided => Expression.Lambda<Action<IContext, DecidedAthlete>>(call, _context, subject),
            _ when subject == _first => Expression.Lambda<Action<IContext, FirstCandidate>>(call, _context, subject),
            _ => Expression.Lambda<Action<IContext, SecondCandidate>>(call, _context, subject),
        };
    }
}
