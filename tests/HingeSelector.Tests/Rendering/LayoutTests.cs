using HingeSelector.Rendering;

namespace HingeSelector.Tests.Rendering;

public class LayoutTests
{
    [Fact]
    public void Plain_text_breaks_between_words_and_keeps_them_all()
    {
        var text = string.Join(' ', Enumerable.Range(0, 200).Select(i => new string('a', 1 + (i % 17))));
        var rows = PlainText.Rows(Line.Text("For", text));

        rows.ShouldAllBe(r => r.Length <= PlainText.Width);
        string.Join(' ', rows.SelectMany(r => r.Split(' ', StringSplitOptions.RemoveEmptyEntries))).ShouldBe("For " + text);
    }

    [Fact]
    public void A_word_longer_than_a_row_stays_whole()
        => PlainText.Wrap($"a {new string('b', 200)} c", 20).ShouldBe(["a", new string('b', 200), "c"]);

    [Fact]
    public void What_would_move_the_cursor_does_not_reach_the_terminal()
        => PlainText.Rows(Line.Title("p01 \u001b[2Jname\r\n: RANKED")).ShouldAllBe(r => !r.Any(char.IsControl));

    [Theory]
    [InlineData("a|b", @"a\|b")]
    [InlineData("*x* _y_ `z`", @"\*x\* \_y\_ \`z\`")]
    [InlineData("<b>[link](x)</b>", @"\<b\>\[link\](x)\</b\>")]
    [InlineData("two\nlines", "two lines")]
    public void Markdown_shows_typed_text_as_it_is(string typed, string expected) => MarkdownText.Escape(typed).ShouldBe(expected);

    [Fact]
    public void A_document_sets_headings_apart_and_keeps_lists_together()
        => MarkdownText.Of([Line.Title("p01"), Line.Heading("1. Sumo"), Line.Text("For", "a"), Line.Text("", "- b"), Line.Faint("Stamp")])
            .ShouldBe("# p01\n\n## 1. Sumo\n\n- **For:** a\n- b\n\nStamp\n");

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@x", "'@x")]
    [InlineData("-3 for fit", "'-3 for fit")]
    [InlineData("plain", "plain")]
    [InlineData("", "")]
    public void No_spreadsheet_takes_a_text_for_a_formula(string text, string expected) => CsvAnswer.Text(text).ShouldBe(expected);
}
