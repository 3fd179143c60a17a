using HingeSelector.Knowledge;
using HingeSelector.Rules;
using HingeSelector.Rules.Conclusions;
using HingeSelector.Rules.Solving;

namespace HingeSelector.Analysis;

/// <summary>Looks for screens on which nothing stops the athlete and yet the variants are out.</summary>
/// <remarks>
/// Only rules on answers of the athlete and on properties of the variants take part: whether a start position fits is worked out from a
/// body and cannot be set at will. All answers that take part are given, so a screen that is found is a screen that a coach can meet.
/// </remarks>
internal sealed class Gaps(CheckedBook book)
{
    private static readonly AnyForm _fails = new([]);

    /// <summary>Variants that carry no load: what is left when nothing else is.</summary>
    public IReadOnlyList<Variant> Drills { get; } = [.. book.Book.Variants.Where(v => Carries(book.Book, v, "load-in-hands") == "none" && Carries(book.Book, v, "spinal-load") == "none")];

    /// <summary>A screen that leaves nothing; null when there is none.</summary>
    public Witness? NothingLeft() => book.Solver.FindComplete([.. NothingStops(), .. book.Book.Variants.Select(v => new Goal(Out(v), Need.True))]);

    /// <summary>A screen that leaves only variants without load; null when there is none.</summary>
    public Witness? OnlyDrillsLeft() => Drills.Count == 0 ? null : book.Solver.FindComplete(
    [
        .. NothingStops(),
        .. book.Book.Variants.Except(Drills).Select(v => new Goal(Out(v), Need.True)),
        new Goal(new AllForm([.. Drills.Select(Out)]), Need.NotTrue),
    ]);

    private static string? Carries(RuleBook book, Variant variant, string id)
        => book.Vocabulary.Find(id) is { } word ? word.Print(variant.Words.First(w => w.Slot == word.Slot).Value) : null;

    private IEnumerable<Goal> NothingStops()
        => book.Living.Where(r => r.Conclusions.Any(c => c is StopConclusion { Level: not StopLevel.Today })).Select(r => new Goal(book.Space.Of(r), Need.NotTrue));

    /// <summary>Something takes the variant out. A stop of today that allows nothing is told by itself.</summary>
    private AnyForm Out(Variant variant)
    {
        var bit = 1UL << variant.Index;
        return new AnyForm(
        [
            .. book.Living.Where(r => (r.Variants & bit) != 0 && r.Conclusions.Any(c => c is ExclusionConclusion) && !ReadsAStart(r)).Select(r => For(book.Space.Of(r), variant.Index)),
            .. book.Living.Where(r => r.Conclusions.Any(c => c is StopConclusion { Level: StopLevel.Today, Allowed: not 0 } s && (s.Allowed & bit) == 0)).Select(book.Space.Of),
        ]);
    }

    private static bool ReadsAStart(Rule rule) => rule.Conditions.SelectMany(c => c.Reads).Any(r => r.Word.About == Words.WordAbout.Candidate && r.Word.Id != "variant");

    /// <summary>A form for one variant: its own words have only one answer.</summary>
    private Form For(Form form, int variant) => form switch
    {
        LeafForm leaf when leaf.Family == book.Space.Variants => leaf.States(Need.True).Has(variant) ? Form.Holds : _fails,
        NotForm not => new NotForm(For(not.Part, variant)),
        AllForm all => new AllForm([.. all.Parts.Select(p => For(p, variant))]),
        AnyForm any => new AnyForm([.. any.Parts.Select(p => For(p, variant))]),
        _ => form,
    };
}
