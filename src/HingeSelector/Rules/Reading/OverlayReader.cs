using HingeSelector.Diagnostics;
using HingeSelector.Knowledge;
using HingeSelector.Reading;
using HingeSelector.Rules.Checking;
using HingeSelector.Rules.Conclusions;

namespace HingeSelector.Rules.Reading;

/// <summary>Reads what a philosophy changes, switches off and adds, against the rules of the base.</summary>
internal sealed class OverlayReader
{
    private const string Topic = "philosophies";

    private readonly RuleBook _book;
    private readonly IReadOnlyDictionary<string, Rule> _base;
    private readonly RuleReader _reader;
    private readonly SealedRules _seals;
    private readonly DiagnosticBag _bag;

    /// <summary>Prepares.</summary>
    /// <param name="book">The base.</param>
    /// <param name="reader">Reads added rules.</param>
    /// <param name="seals">The seal over the base.</param>
    /// <param name="bag">Collects faults.</param>
    public OverlayReader(RuleBook book, RuleReader reader, SealedRules seals, DiagnosticBag bag)
    {
        (_book, _reader, _seals, _bag) = (book, reader, seals, bag);
        _base = book.Rules.ToDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>Reads the rules of one philosophy.</summary>
    /// <returns>The overlay, or null when there were faults.</returns>
    public Overlay? Read(YamlNode root, Philosophy philosophy)
    {
        var before = _bag.ErrorCount;
        var map = MapReader.Open(root, "a philosophy", _bag)!;
        var draft = new OverlayDraft(_book, philosophy, _bag);
        var changer = new RuleChanger(_book, _reader, philosophy, _bag);
        foreach (var node in map.List("change"))
        {
            if (Target(node, "a change", draft) is var (rule, entry, at) && changer.Read(rule, entry, at) is { } changed)
                draft.Change(changed);
        }
        foreach (var node in map.List("off"))
        {
            if (Target(node, "a switched-off rule", draft) is var (rule, entry, at) && entry.Required("reason") is { } reason)
                draft.SwitchOff(rule, new RuleChange(philosophy.Id, rule.Id, RuleChangeKind.Off, "switched off", reason.Value, at));
        }
        foreach (var node in map.List("add"))
        {
            if (_reader.Read(node, Topic) is { } rule && MayBeAdded(rule))
                draft.Add(rule with { Change = new RuleChange(philosophy.Id, rule.Id, RuleChangeKind.Added, "added", rule.Because, rule.Span) });
        }
        if (_bag.ErrorCount != before)
            return null;
        var overlay = draft.Finish();
        SealProof.Run(_book, _seals, overlay, _bag);
        return _bag.ErrorCount == before ? overlay : null;
    }

    private (Rule Rule, MapReader Entry, SourceSpan At)? Target(YamlNode node, string where, OverlayDraft draft)
    {
        var entry = MapReader.Open(node, where, _bag);
        if (entry?.Required("rule") is not { } id)
            return null;
        foreach (var key in where == "a change" ? RuleChanger.Keys : ["reason"])
            entry.Known(key);
        entry.Finish();
        if (!_base.TryGetValue(id.Value, out var rule))
            _bag.Add(Problems.UnknownRule(id.Span, id.Value, [.. _base.Keys]));
        else if (_seals.Why(rule) is { } why)
            _bag.Add(Problems.SealedRule(id.Span, rule.Id, why));
        else if (draft.Claim(rule.Id, id.Span))
            return (rule, entry, id.Span);
        return null;
    }

    private bool MayBeAdded(Rule rule)
    {
        var before = _bag.ErrorCount;
        if (_base.TryGetValue(rule.Id, out var other))
            _bag.Add(Problems.DuplicateId(rule.Span, "rule", rule.Id, other.Span));
        foreach (var found in rule.Conclusions.OfType<FindingConclusion>())
        {
            if (_seals.ClearedBy(found.Finding) is { } reader)
                _bag.Add(Problems.ClearsSealed(rule.Span, rule.Id, _book.Findings[found.Finding].Id, reader.Id));
        }
        if (_seals.SetUpReader is { } sees && SealedRules.PlacingKey(rule) is { } key)
            _bag.Add(Problems.MovesSealedSetUp(rule.Span, rule.Id, key, sees.Id));
        return _bag.ErrorCount == before;
    }
}
