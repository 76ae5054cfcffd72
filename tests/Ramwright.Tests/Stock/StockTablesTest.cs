using Ramwright.Files;
using Ramwright.Stock;
using Ramwright.Workings;

namespace Ramwright.Tests.Stock;

public class StockTablesTest
{
    private static StockReading Read(string text, string file = "mine.csv") =>
        StockTables.Read(new StringReader(text), file, StockTables.Built);

    [Fact]
    public void Own_section_goes_onto_the_shelf()
    {
        StockReading reading = Read("# what lies behind the shed\nname,h_mm,b_mm,tw_mm,tf_mm,r_mm\nold beam,203,102,5.4,9.3,7.6\n");

        Assert.Empty(reading.Faults);
        Assert.True(reading.Shelf.TrySection("Old Beam", out Shape? beam));
        Assert.Equal(Citation.Practice("own table mine.csv"), beam.Source);
        Assert.True(reading.Shelf.TrySection("HEB 160", out _));
        Assert.False(StockTables.Built.TrySection("Old Beam", out _));
    }

    [Fact]
    public void Own_row_stands_in_the_stead_of_a_shipped_one()
    {
        StockReading reading = Read("# table: steels\nname,up_to_mm,fy_MPa,fu_MPa,source\nS275,40,290,440,tensile test of 3 May\n");

        Assert.Empty(reading.Faults);
        Assert.True(reading.Shelf.TrySteel("S275", out Steel? steel));
        Assert.Equal(290e6, steel.Fy(0.02));
        Assert.Equal("tensile test of 3 May", steel.Source.Work);
        Assert.True(reading.Shelf.TrySteel("S355", out _));
        Assert.Single(reading.Shelf.Steels, s => s.Name == "S275");
    }

    [Fact]
    public void Units_stand_in_the_column_names()
    {
        StockReading reading = Read("name,h_in,t_in\nsaw frame,8,1.5\n");

        Assert.Empty(reading.Faults);
        Assert.True(reading.Shelf.TrySection("saw frame", out Shape? bar));
        Assert.Equal((0.2032, 0.0381), bar is Flat f ? (f.H, f.T) : default);
    }

    [Fact]
    public void Spreadsheets_with_semicolons_and_decimal_commas_are_read()
    {
        StockReading reading = Read("\uFEFFname;h_mm;t_mm;source\r\n\"Schiene; alt\";200,5;40;gemessen\r\n\r\n");

        Assert.Empty(reading.Faults);
        Assert.True(reading.Shelf.TrySection("schiene; alt", out Shape? bar));
        Assert.Equal(0.2005, Assert.IsType<Flat>(bar).H);
    }

    [Fact]
    public void Quotes_hold_commas_and_doubled_quotes()
    {
        StockReading reading = Read("name,h_mm,t_mm,source\n\"8\"\" bar, bent\",200,40,\"heap, left\"\n");

        Assert.Empty(reading.Faults);
        Assert.True(reading.Shelf.TrySection("8\" bar, bent", out Shape? bar));
        Assert.Equal("heap, left", bar.Source.Work);
    }

    [Theory]
    [InlineData("name,h_mm,t_mm\na,200,forty\nb,200,40", 2, "t_mm is \"forty\"", "a number there")]
    [InlineData("name,h_mm,t_mm\na,200,NaN\nb,200,40", 2, "t_mm is NaN", "a number from 0.1 to 3000")]
    [InlineData("name,h_mm,t_mm\na,200,-4\nb,200,40", 2, "t_mm is -4", "a number from 0.1 to 3000")]
    [InlineData("name,h_mm,t_mm\n,200,40\nb,200,40", 2, "the row has no name", "a name in every row")]
    [InlineData("name,h_mm,t_mm\na,200\nb,200,40", 2, "the row has no t", "a t in every row")]
    [InlineData("name,h_mm,t_mm\nb,200,40\na,200,40,9,9", 3, "the row has 5 fields under 3 columns", "quotes around a text with a comma in it")]
    [InlineData("name,h_mm,t_mm\nb,200,40\nB,210,40", 3, "B stands in the table twice, first in line 2", "each name once")]
    [InlineData("name,h_mm,b_mm,tw_mm,tf_mm,r_mm\na,100,50,60,8,5\nb,100,50,5,8,5", 2, "Tw is 60 mm; it must be more than 0 mm and less than 50 mm", "dimensions that fit together")]
    [InlineData("name,h_mm,b_mm,t_mm,forming\na,100,50,5,warm\nb,100,50,5,cold", 2, "forming is \"warm\"", "hot or cold")]
    [InlineData("name,h_mm,t_mm,source,standing\na,100,50,me,certain\nb,100,50,me,practice", 2, "standing is \"certain\"", "published, from memory or practice, or nothing")]
    public void A_bad_row_is_named_and_the_good_ones_are_kept(string table, int line, string found, string wanted)
    {
        StockReading reading = Read(table);

        Assert.Equal([new TableFault("mine.csv", line, found, wanted)], reading.Faults);
        Assert.True(reading.Shelf.TrySection("b", out _));
        Assert.Equal($"mine.csv:{line}  {found}; {wanted}", reading.Faults[0].ToString());
    }

    [Theory]
    [InlineData("", 1, "the table has no line of column names")]
    [InlineData("# only words\n", 1, "the table has no line of column names")]
    [InlineData("colour,weight\nred,2", 1, "the column names do not tell what kind of table this is")]
    [InlineData("# table: steal\nname,up_to_mm,fy_MPa,fu_MPa\n", 1, "no kind of table is called \"steal\"")]
    [InlineData("# table: bars\nname,h_mm,thick_mm\nx,2,3", 2, "bars have no column \"thick_mm\"")]
    [InlineData("# table: bars\nname,h,t_mm\nx,2,3", 2, "column h has no unit")]
    [InlineData("# table: bars\nname,h_mm,h_in,t_mm\nx,2,3,4", 2, "column h stands there twice")]
    [InlineData("# table: bars\nname,h_mm\nx,2", 2, "the column t_mm is missing")]
    public void A_head_that_cannot_be_read_is_one_fault(string table, int line, string found)
    {
        StockReading reading = Read(table);

        TableFault fault = Assert.Single(reading.Faults);
        Assert.Equal((line, found), (fault.Line, fault.Found));
        Assert.Same(StockTables.Built, reading.Shelf);
    }

    [Theory]
    [InlineData("A,16,400,300", "the tensile strength fu is less than the yield strength fy")]
    [InlineData("A,16,275000000,300", "fy_MPa is 275000000")]
    [InlineData("A,16,275,430\nA,10,265,430", "A is given twice up to this thickness")]
    [InlineData("unknown,16,900,1000", "\"unknown\" is kept for steel without papers")]
    public void Steel_with_a_bad_row_is_left_out_whole(string rows, string found)
    {
        StockReading reading = Read($"name,up_to_mm,fy_MPa,fu_MPa\n{rows}\n");

        Assert.Equal(found, Assert.Single(reading.Faults).Found);
        Assert.False(reading.Shelf.TrySteel("A", out _));
        Assert.True(reading.Shelf.TrySteel("unknown", out Steel? unknown));
        Assert.Equal(235e6, unknown.Fy(0.01));
    }

    [Fact]
    public void Every_kind_reads_a_table_under_its_own_header()
    {
        string[] rows =
        [
            "steels|A,40,275,430,also A,0.85,careful,,me,", "classes|8.8,0,39,600,640,800,660,830,0.6,also 8.8,me,", "threads|M7,7,1,,me,",
            "hoses|my hose,9.5,330,130,me,", "port-threads|My 1/4,BSPP,13.157,1.337,,me,", "oils|VG 15,15,3.3,860,me,", "i-sections|A,200,100,6,9,12,,me,",
            "channels|A,200,75,8,11,11,6,8,37,,me,", "hollow-sections|A,200,100,6,cold,12,6,,me,", "tubes|A,60,5,hot,,me,",
            "angles|A,80,80,8,10,5,,me,", "tees|A,100,100,11,11,11,5,3,2,,me,",
            "boxes|A,200,100,8,10,,me,", "bars|A,200,40,,me,",
        ];
        foreach ((string kind, string header) in StockTables.Kinds)
        {
            string row = rows.Single(r => r.StartsWith(kind + "|", StringComparison.Ordinal))[(kind.Length + 1)..];
            StockReading reading = Read($"# table: {kind}\n{header}\n{row}\n");
            Assert.True(reading.Faults.Count == 0, string.Join('\n', reading.Faults));
            Assert.NotSame(StockTables.Built, reading.Shelf);

            Assert.Empty(Read($"{header}\n{row}\n").Faults);        // the columns alone tell the kind
        }
    }

    [Fact]
    public void Shipped_rows_name_their_sources()
    {
        Assert.All(StockTables.Built.Sections, s => Assert.NotEmpty(s.Source.Work));
        Assert.All(StockTables.Built.Steels, s => Assert.DoesNotContain("own table", s.Source.Work, StringComparison.Ordinal));
        Assert.All(StockTables.Built.Hoses, h => Assert.NotEqual(Standing.Published, h.Source.Standing));
    }
}
