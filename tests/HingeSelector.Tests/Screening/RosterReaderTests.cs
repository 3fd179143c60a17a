namespace HingeSelector.Tests.Screening;

public sealed class RosterReaderTests
{
    [Theory]
    [InlineData("id,sex,stature (cm),mass (lb)\na1,male,188.5,198\n")]
    [InlineData("id;sex;stature (cm);mass (lb)\na1;male;188,5;198\n")]
    [InlineData("id\tsex\tstature (cm)\tmass (lb)\na1\tmale\t188,5\t198\n")]
    [InlineData("sep=;\nid;sex;stature (cm);mass (lb)\na1;male;188,5;198\n")]
    [InlineData("\uFEFFid,sex,stature (cm),mass (lb)\r\na1,male,188.5,198\r\n")]
    [InlineData("id,sex,stature (cm),mass (lb)\ra1,male,188.5,198")]
    [InlineData("\"id\",\"sex\",\"stature (cm)\",\"mass (lb)\"\n\"a1\",\"male\",\"188,5\",\"198\"\n")]
    [InlineData("ID, Sex , Stature  (CM),mass (lb)\n a1 , male , 188.5 , 198 \n\n,,,\n")]
    public void One_roster_in_many_dialects_is_one_roster(string csv)
    {
        var athlete = Screens.Roster(csv, out var faults).Good.Single();
        faults.ShouldBeEmpty();
        athlete.Id.ShouldBe("a1");
        athlete.Find("stature")!.Value.Low.ShouldBe(1.885);
        athlete.Find("mass")!.Value.Low.ShouldBe(89.81128926, 1e-9);
        athlete.Find("sex")!.Typed.ShouldBe("male");
    }

    [Fact]
    public void A_quote_inside_a_plain_cell_is_text_and_swallows_nothing()
    {
        var result = Screens.Roster("id,stature (cm),sex\na1,5'11\",male\na2,6'1\",female\n", out var faults);
        faults.ShouldBeEmpty();
        result.Good.Select(r => r.Find("stature")!.Value.Low).ShouldBe([1.8034, 1.8542]);
    }

    [Fact]
    public void Quoted_cells_keep_separators_quotes_and_lines()
    {
        var result = Screens.Roster("id,name,sex\na1,\"Amadi, \"\"K.\"\"\nsecond team\",male\n", out var faults);
        faults.ShouldBeEmpty();
        result.Good.Single().Name.ShouldBe("Amadi, \"K.\"\nsecond team");
    }

    [Theory]
    [InlineData("'=A. Amadi", "=A. Amadi")]
    [InlineData("'@amadi", "@amadi")]
    [InlineData("'-", "-")]
    [InlineData("'t Hooft", "'t Hooft")]
    public void The_guard_against_formulas_is_taken_off(string cell, string name)
        => Screens.Roster($"id,name\na1,{cell}\n", out _).Good.Single().Name.ShouldBe(name);

    [Fact]
    public void Places_are_exact_behind_quotes_and_lines()
    {
        Screens.Roster("id,name,sex,history\n\"a1\",\"A\nB, C\",\"man\",\"hernia + knee\"\n", out var faults);
        faults.Select(f => (f.Id, f.Span.Line, f.Span.Column, f.Span.Length)).ShouldBe([("HS2002", 2, 6, 5), ("HS2002", 2, 22, 4)]);
    }

    [Fact]
    public void A_bad_row_tells_all_its_faults_and_the_others_load()
    {
        var result = Screens.Roster("id,sex,stature\na1,male,188\na2,man,tall\na3,female,170\n", out var faults);
        result.Good.Select(r => r.Id).ShouldBe(["a1", "a3"]);
        var bad = result.BadRows.Single();
        (bad.Row, bad.Id, bad.Span.Line).ShouldBe((3, "a2", 2));
        bad.Faults.Count.ShouldBe(2);
        faults.ShouldBe(bad.Faults);
    }

    [Fact]
    public void Of_two_rows_for_one_athlete_neither_is_used()
    {
        var result = Screens.Roster("id,sex\na1,male\na2,female\na1,female\n", out var faults);
        result.Good.Single().Id.ShouldBe("a2");
        result.BadRows.Select(b => b.Row).ShouldBe([2, 4]);
        result.BadRows.ShouldAllBe(b => b.Faults.Count == 1);
        faults.Single().Id.ShouldBe("HS5004");
    }

    [Fact]
    public void A_bad_header_refuses_the_file()
    {
        var result = Screens.Roster("id,sexx,mass\na1,male,80\n", out var faults);
        result.HeaderRead.ShouldBeFalse();
        result.Good.ShouldBeEmpty();
        faults.Single().Hint.ShouldBe("Did you mean 'sex'?");
    }

    [Fact]
    public void A_row_whose_quote_stays_open_is_the_only_one_lost_before_it()
    {
        var result = Screens.Roster("id,name\na1,A\na2,\"B\na3,C\n", out var faults);
        result.Good.Single().Id.ShouldBe("a1");
        result.BadRows.Single().Row.ShouldBe(3);
        faults.Single().Id.ShouldBe("HS5013");
    }

    [Fact]
    public void Several_clearances_share_a_cell()
    {
        var result = Screens.Roster("""
            id,clearance
            a1,physiotherapist; G. Nowell; 2026-05-04; for low-back-stress-injury; valid until 2026-08-01; covers load-in-hand; cap 20 kg; seen by R. Idris | sports physician; A. Nkemba; 2026-09-14; for low-back-stress-injury + shoulder-operation Left; valid until 2027-01-31; covers load-in-hand + spinal-load; seen by R. Idris
            a2,none
            """, out var faults);
        faults.ShouldBeEmpty();
        var letters = result.Good[0].Clearances;
        letters.Select(c => c.Who).ShouldBe(["G. Nowell", "A. Nkemba"]);
        letters.Select(c => c.Profession).ShouldBe(["physiotherapist", "sports-physician"]);
        letters[1].For.ShouldBe(["low-back-stress-injury", "shoulder-operation left"]);
        letters.Select(c => c.Cap).ShouldBe([20, null]);
        letters[1].Covers.ShouldBe(["load-in-hand", "spinal-load"]);
        result.Good[1].Clearances.ShouldBeEmpty();
    }

    [Fact]
    public void A_unit_in_the_cell_goes_before_the_one_in_the_header()
        => Screens.Roster("id,mass (lb)\na1,92 kg\n", out _).Good.Single().Find("mass")!.Value.Low.ShouldBe(92);
}
