using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Stockwright.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class OwnClinging : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "OwnClingingFraction",
                table: "Kitchens",
                type: "REAL",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "OwnClingingFraction",
                table: "Kitchens");
        }
    }
}
